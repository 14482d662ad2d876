// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import picocli.CommandLine.IVersionProvider;

/** Version of the packaged program. */
final class ProgramVersion implements IVersionProvider {
    @Override
    public String[] getVersion() {
        String version = ProgramVersion.class.getPackage().getImplementationVersion();
        return new String[] {"Tipwright " + (version == null ? "(not packaged)" : version)};
    }
}
