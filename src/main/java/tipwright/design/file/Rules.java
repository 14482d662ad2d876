// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

/** What must hold between the values of a design. */
final class Rules {
    private Rules() {}

    static void check(Reader reader, SourceMap sources, Problems warnings) {}
}
