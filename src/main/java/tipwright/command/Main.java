// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

/** Entry point. */
public final class Main {
    private Main() {}

    /** Runs. */
    public static void main(String[] args) {
        System.out.println("Tipwright");
    }
}
