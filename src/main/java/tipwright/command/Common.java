// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import picocli.CommandLine.Command;

/** What all commands share: help, version, exit codes. */
@Command(
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        usageHelpWidth = 96,
        usageHelpAutoWidth = false,
        descriptionHeading = "%n",
        parameterListHeading = "%n",
        optionListHeading = "%n",
        commandListHeading = "%nCommands:%n",
        exitCodeListHeading = "%nExit codes:%n",
        exitCodeList = {
            "0:every check that could be made passes, some may be close; or the command did its work",
            "1:a check fails",
            "2:the command line or a file was not understood",
            "3:the design cannot be computed, or a file cannot be written"
        },
        footerHeading = "%nExamples:%n")
final class Common {}
