// SPDX-License-Identifier: Apache-2.0
package tipwright.load;

import java.util.List;
import tipwright.analysis.Examples;
import tipwright.design.Design;

/** Load cases by name, and designs with another tank or slurry, for tests. */
final class Find {
    private Find() {}

    static LoadCase of(List<LoadCase> all, String name) {
        return all.stream().filter(c -> c.name().equals(name)).findFirst().orElseThrow();
    }

    static LoadCase of(LoadTable table, String name) {
        return of(table.cases(), name);
    }

    /** The box of the examples with another inside and slurry, and a smaller opening on top. */
    static Design tank(String interior, String slurry) {
        return tank(
                interior,
                "{name: top, rim: rectangle, width: 0.9 m, height: 0.4 m, centre: [0 m, 1.5 m, 0 m], normal: y}",
                slurry);
    }

    /** The box of the examples with another inside, opening and slurry. */
    static Design tank(String interior, String opening, String slurry) {
        return Examples.read(Examples.BOX
                .replace(
                        "{name: top, rim: rectangle, width: 1 m, height: 1 m, centre: [0 m, 1.5 m, 0 m], normal: y}",
                        opening)
                .replace("{shape: box, size: [1 m, 1 m, 1 m], centre: [0 m, 1 m, 0 m]}", interior)
                .replace("{fill: 100 %, density: 1400 kg/m3, repose: 30 deg}", slurry));
    }
}
