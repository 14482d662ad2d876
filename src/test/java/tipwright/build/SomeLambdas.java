// SPDX-License-Identifier: Apache-2.0
package tipwright.build;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiFunction;
import java.util.function.DoubleSupplier;
import java.util.function.DoubleUnaryOperator;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.LongFunction;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;

/** One of each kind of lambda and method reference, for {@link LambdaClassesTest}; what they give, and what they are. */
public final class SomeLambdas {
    private final double factor;
    private final List<String> seen = new ArrayList<>();

    private SomeLambdas(double factor) {
        this.factor = factor;
    }

    /** Of two words one. */
    interface Joined<T> {
        T join(T first, T second);

        default Joined<T> turned() {
            return (first, second) -> back(second, first);
        }

        private T back(T first, T second) {
            return join(first, second);
        }

        static Joined<String> with(String between) {
            return (first, second) -> first + between + second;
        }
    }

    /** Of several kinds of number one. */
    interface Mixed {
        double of(byte small, char letter, long large, float part, boolean is);
    }

    private record Pair(int first, String second) {}

    private static class Above {
        String name() {
            return "above";
        }
    }

    private static final class Below extends Above {
        @Override
        String name() {
            Supplier<String> other = super::name;
            return "below " + other.get();
        }
    }

    /** What each gives. */
    public static Map<String, Object> given() {
        return new SomeLambdas(1.5).all();
    }

    /** Those that nothing is taken along to, twice: whether one object does for both. */
    public static List<Object> objects() {
        List<Object> all = new ArrayList<>();
        for (int i = 0; i < 2; i++) {
            Supplier<String> nothing = () -> "nothing";
            Supplier<List<String>> fresh = ArrayList::new;
            all.add(nothing);
            all.add(fresh);
        }
        return all;
    }

    /** Can be written to a file, which is left to Java. */
    public static Object serializable() {
        return (Comparator<String> & Serializable) String::compareTo;
    }

    private Map<String, Object> all() {
        Map<String, Object> all = new TreeMap<>();
        DoubleUnaryOperator times = x -> x * factor;
        all.put("a field", times.applyAsDouble(3));
        Function<Integer, Double> own = this::timesFactor;
        all.put("a private method, boxed both ways", own.apply(4));
        ToDoubleFunction<Integer> widened = Integer::intValue;
        all.put("an int widened", widened.applyAsDouble(7));
        IntFunction<int[]> array = int[]::new;
        all.put("an array", array.apply(3).length);
        BiFunction<Integer, String, Pair> constructor = Pair::new;
        all.put("a private constructor", constructor.apply(2, "two").toString());
        Predicate<String> unbound = String::isEmpty;
        all.put("a method of what comes", List.of(unbound.test(""), unbound.test("x")));
        Consumed<String> consumer = seen::add;
        consumer.take("a result that is thrown away");
        LongCount counted = seen::size;
        counted.run();
        all.put("seen", List.copyOf(seen));
        long large = 5_000_000_000L;
        byte small = 3;
        DoubleSupplier taken = () -> large + small + factor;
        all.put("of two sizes", taken.getAsDouble());
        LongFunction<Object> object = Long::valueOf;
        all.put("as an object", object.apply(12));
        Mixed mixed = (b, c, l, f, is) -> b + c + l + f + (is ? 1 : 0);
        all.put("mixed", mixed.of(small, 'c', large, 0.5f, true));
        all.put("of an interface", Joined.with("-").turned().join("a", "b"));
        Function<Object, Function<String, String>> inner = x -> y -> x + y;
        all.put("one in another", inner.apply(1).apply("2"));
        all.put("a method above", new Below().name());
        Comparator<Pair> compared = Comparator.comparing(Pair::second).thenComparingInt(Pair::first);
        all.put("compared", Integer.signum(compared.compare(new Pair(1, "b"), new Pair(2, "b"))));
        return all;
    }

    /** Takes what is given. */
    interface Consumed<T> {
        void take(T one);
    }

    /** Gives nothing back. */
    interface LongCount {
        void run();
    }

    private double timesFactor(int x) {
        return x * factor;
    }
}
