// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A whole design as read from its file; SI inside, points measured with the tank stowed.
 *
 * @param tipwright version of the format, always 1
 * @param parts names of the design's own parts files, beside the design
 */
public record Design(
        @Note("Version of this file format: 1") @Counted(atLeast = 1, atMost = 1) int tipwright,
        @Note("What the machine is called") String name,
        @Note("What it is for, in a sentence") @Nullable String about,
        @Note("The ground or deck it stands on") @Preset Site site,
        @Note("The tank: its inside, its weight, its openings") Tank tank,
        @Note("What is in the tank") Slurry slurry,
        @Note("The pivot and its two bearings") Pivot pivot,
        @Note("What pushes the tank over") Drive drive,
        @Note("How far it tips") TiltRange tilt,
        @Note("Friction; left out: by the kind of bearing") @Preset Friction friction,
        @Note("Safety factors; every default is shown by the program") @Preset Factors factors,
        @Note("House limits that are no safety factor") @Preset Limits limits,
        @Note("Load cases to leave out or to add") @Preset Cases cases,
        @Note("How often it is used") @Preset Use use,
        @Note("What drives the actuators; left out: what the actuator itself is rated for") @Nullable Supply supply,
        @Note("How it is dumped, and the time wanted") @Preset Dump dump,
        @Note("The channel or pit that the slurry runs into") @Nullable Channel channel,
        @Note("Springs and weights that help the actuator, weights of links") @Preset List<Assist> assists,
        @Note("What could go wrong, and how the machine is made against it") @Preset WhatIf whatIf,
        @Note("Where the mounts may go, for 'place'") @Nullable Mounts mounts,
        @Note("Parts files beside this file, by name") @Preset List<String> parts) {

    /** This design with another slurry. */
    public Design withSlurry(Slurry other) {
        return new Design(
                tipwright, name, about, site, tank, other, pivot, drive, tilt, friction, factors, limits, cases, use,
                supply, dump, channel, assists, whatIf, mounts, parts);
    }

    /** This design with another drive. */
    public Design withDrive(Drive other) {
        return new Design(
                tipwright, name, about, site, tank, slurry, pivot, other, tilt, friction, factors, limits, cases, use,
                supply, dump, channel, assists, whatIf, mounts, parts);
    }

    /** This design with another pivot. */
    public Design withPivot(Pivot other) {
        return new Design(
                tipwright, name, about, site, tank, slurry, other, drive, tilt, friction, factors, limits, cases, use,
                supply, dump, channel, assists, whatIf, mounts, parts);
    }

    /** This design on other ground. */
    public Design withSite(Site other) {
        return new Design(
                tipwright, name, about, other, tank, slurry, pivot, drive, tilt, friction, factors, limits, cases, use,
                supply, dump, channel, assists, whatIf, mounts, parts);
    }

    /** This design with another tilt range. */
    public Design withTilt(TiltRange other) {
        return new Design(
                tipwright, name, about, site, tank, slurry, pivot, drive, other, friction, factors, limits, cases, use,
                supply, dump, channel, assists, whatIf, mounts, parts);
    }

    /** This design with other load cases. */
    public Design withCases(Cases other) {
        return new Design(
                tipwright, name, about, site, tank, slurry, pivot, drive, tilt, friction, factors, limits, other, use,
                supply, dump, channel, assists, whatIf, mounts, parts);
    }

    /** This design with other friction. */
    public Design withFriction(Friction other) {
        return new Design(
                tipwright, name, about, site, tank, slurry, pivot, drive, tilt, other, factors, limits, cases, use,
                supply, dump, channel, assists, whatIf, mounts, parts);
    }

    /** This design with other zones for its mounts. */
    public Design withMounts(@Nullable Mounts other) {
        return new Design(
                tipwright, name, about, site, tank, slurry, pivot, drive, tilt, friction, factors, limits, cases, use,
                supply, dump, channel, assists, whatIf, other, parts);
    }
}
