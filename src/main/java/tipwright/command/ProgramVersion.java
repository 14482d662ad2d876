// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import picocli.CommandLine.IVersionProvider;
import tipwright.document.Origin;

/** Version of the packaged program. */
final class ProgramVersion implements IVersionProvider {
    @Override
    public String[] getVersion() {
        return new String[] {Origin.program()};
    }
}
