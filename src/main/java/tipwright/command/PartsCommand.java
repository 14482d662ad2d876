// SPDX-License-Identifier: Apache-2.0
package tipwright.command;

import picocli.CommandLine.Command;

@Command(name = "parts")
final class PartsCommand {}
