// SPDX-License-Identifier: Apache-2.0
package tipwright.interview;

import java.util.function.Function;
import java.util.function.Predicate;
import tipwright.quantity.QuantityException;

/**
 * A question about the machine.
 *
 * @param id the same in every interview
 * @param text as asked
 * @param tape where to hold the tape, or where else the answer is found, in the units of the tape
 * @param usual what is taken when nothing is typed
 * @param wanted whether it is asked, after these answers
 * @param reader understands what was typed
 */
public record Question(
        String id,
        String text,
        Function<Answers, String> tape,
        Function<Answers, String> usual,
        Predicate<Answers> wanted,
        Reader reader) {

    /** Understands what was typed. */
    @FunctionalInterface
    public interface Reader {
        /**
         * The answer as it is kept, units written out.
         *
         * @throws QuantityException when it is not understood; the message says what is wrong and how to fix it
         */
        String read(String typed, Answers before) throws QuantityException;
    }
}
