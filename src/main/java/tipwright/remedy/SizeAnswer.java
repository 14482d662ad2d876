// SPDX-License-Identifier: Apache-2.0
package tipwright.remedy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import tipwright.quantity.Text;

/**
 * The answer to a '?' of a design file.
 *
 * @param series of sizes that it is sold in, as in {@link tipwright.design.file.SizeQuestion}
 * @param part that it belongs to in words: 'frame pin'
 * @param normal the smallest that passes in the normal dump; null: none does
 * @param always the smallest that also passes if something goes wrong; null: none does
 * @param taken what the checks were made with
 * @param written the same as written in the file, by path
 * @param because what stands in the way where none passes, or what asks for a larger one than the normal dump
 * @param unknown titles of its checks that cannot tell
 * @param checks ids of those of a pin or weld
 */
public record SizeAnswer(
        String series,
        String part,
        @Nullable String normal,
        @Nullable String always,
        String taken,
        Map<String, String> written,
        Text because,
        List<String> unknown,
        Set<String> checks) {
    /** Copies the collections. */
    public SizeAnswer {
        written = Map.copyOf(written);
        unknown = List.copyOf(unknown);
        checks = Set.copyOf(checks);
    }
}
