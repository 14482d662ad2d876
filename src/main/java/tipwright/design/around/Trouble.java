// SPDX-License-Identifier: Apache-2.0
package tipwright.design.around;

import java.util.Locale;

/** Something that may go wrong and that a design may say cannot happen on its machine. */
public enum Trouble {
    LOST_POWER("the power is lost"),
    BURST_HOSE("a hose bursts"),
    LOAD_LET_GO_AT_ONCE("the whole load drops out at once"),
    WHEEL_SINKS("a wheel sinks"),
    FROZEN_SOLID("the load is frozen solid"),
    FULL_OF_RAINWATER("the tank is full of rainwater"),
    OUTLET_BLOCKS_ON_THE_WAY("the outlet blocks on the way"),
    JAM("the tank jams"),
    VALVE_SHUTS_ON_THE_WAY_DOWN("a valve shuts on the way down"),
    ONE_CARRIES_ALL("one actuator carries everything"),
    ONE_RUNS_AHEAD("one actuator gets ahead of the other");

    private final String words;

    Trouble(String words) {
        this.words = words;
    }

    /** What happens, in plain words. */
    public String words() {
        return words;
    }

    /** Whether the finding of a what-if is about it, by its id. */
    public boolean is(String id) {
        String name = name().toLowerCase(Locale.ROOT).replace('_', '-');
        return id.equals("what-if/" + name) || (id.startsWith("what-if/") && id.endsWith("-when-" + name));
    }
}
