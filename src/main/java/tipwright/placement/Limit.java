// SPDX-License-Identifier: Apache-2.0
package tipwright.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import tipwright.check.Checks;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;

/**
 * What bounds where the mounts can go: what the checks with {@link Trait#BOUNDS_MOUNTS} tell, in their order, and the time that is
 * wanted. There is one of each.
 */
public final class Limit implements Comparable<Limit> {
    private static final List<Limit> ALL = all();

    /** How many there are. */
    static final int COUNT = ALL.size();

    static final Limit REACH = of("reach");
    static final Limit STROKE_IN = of("stroke/drawn-in");
    static final Limit STROKE_OUT = of("stroke/drawn-out");
    static final Limit PUSH = of("push");
    static final Limit PULL = of("pull");

    /** The time that is wanted, which no check tells. */
    static final Limit TIME = at(COUNT - 1);

    private final int index;
    private final String words;
    private final String opener;

    private Limit(int index, String words, String opener) {
        this.index = index;
        this.words = words;
        this.opener = opener;
    }

    private static List<Limit> all() {
        List<Limit> all = new ArrayList<>();
        for (Check check : Checks.all()) {
            for (String id : bounds(check) ? check.bounding() : List.<String>of()) {
                all.add(new Limit(all.size(), check.bound(id), check.opener()));
            }
        }
        all.add(new Limit(all.size(), "time wanted", "{more} time, with {actuator}"));
        return List.copyOf(all);
    }

    /** Whether candidates are judged by a check, all of them. */
    static boolean bounds(Check check) {
        return check.traits().contains(Trait.BOUNDS_MOUNTS) && !check.traits().contains(Trait.ASKED_LATE);
    }

    /** All of them, in the order of the checks. */
    public static List<Limit> values() {
        return ALL;
    }

    /** The limit that a check tells of; null when it is none that every candidate is judged by. */
    static @Nullable Limit of(Check check, String id) {
        return bounds(check) ? named(check.bound(id)) : null;
    }

    /** The limit that a finding is about; null when it is none that every candidate is judged by. */
    static @Nullable Limit of(Finding finding) {
        return Checks.of(finding).map(c -> of(c, finding.id())).orElse(null);
    }

    /**
     * The limit that findings of an id are about.
     *
     * @throws NullPointerException when it is none
     */
    static Limit of(String id) {
        Check told = Checks.all().stream()
                .filter(c -> (id + "/").startsWith(c.id() + "/"))
                .findFirst()
                .orElseThrow();
        return Objects.requireNonNull(of(told, id), id);
    }

    private static @Nullable Limit named(String words) {
        for (Limit limit : ALL) {
            if (limit.words.equals(words)) {
                return limit;
            }
        }
        return null;
    }

    /** Short, for a map. */
    public String words() {
        return words;
    }

    /**
     * What of a part would open it when it is passed; empty: no change of a part does.
     *
     * @param over utilisation over what is allowed
     * @param actuator its name
     */
    String opener(double over, String actuator) {
        return Double.isFinite(over)
                ? opener.replace("{more}", String.format(Locale.ROOT, "%.0f", Math.ceil(100 * (over - 1))) + " % more")
                        .replace("{actuator}", actuator)
                : "";
    }

    /** Place in arrays that hold one number for each. */
    int index() {
        return index;
    }

    /** The limit at a place of such an array. */
    static Limit at(int index) {
        return ALL.get(index);
    }

    @Override
    public int compareTo(Limit other) {
        return Integer.compare(index, other.index);
    }

    @Override
    public String toString() {
        return words;
    }
}
