// SPDX-License-Identifier: Apache-2.0
package tipwright.design;

import java.util.List;
import org.jspecify.annotations.Nullable;
import tipwright.design.around.Channel;
import tipwright.design.around.Cold;
import tipwright.design.around.Cradle;
import tipwright.design.around.Footing;
import tipwright.design.around.Frame;
import tipwright.design.around.Ground;
import tipwright.design.around.Mounts;
import tipwright.design.around.Receiver;
import tipwright.design.around.Road;
import tipwright.design.around.SidePart;
import tipwright.design.around.Site;
import tipwright.design.around.Twist;
import tipwright.design.around.Use;
import tipwright.design.around.Wear;
import tipwright.design.around.WhatIf;
import tipwright.design.drive.Assist;
import tipwright.design.drive.Drive;
import tipwright.design.drive.LinkPart;
import tipwright.design.drive.LinkSection;
import tipwright.design.drive.TiltRange;
import tipwright.design.joint.Fastening;
import tipwright.design.joint.Friction;
import tipwright.design.joint.Pivot;
import tipwright.design.key.Copy;
import tipwright.design.key.Counted;
import tipwright.design.key.Note;
import tipwright.design.key.Preset;
import tipwright.design.supply.Supply;
import tipwright.design.tank.Cases;
import tipwright.design.tank.Dump;
import tipwright.design.tank.Slurry;
import tipwright.design.tank.Tank;
import tipwright.design.tape.NamedPoints;
import tipwright.design.tape.Tape;

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
        @Note("The tape that the points were measured with") @Nullable Tape tape,
        @Note("Points by name, as the tape gives them; wherever a point is asked for, a name will do") @Nullable
                NamedPoints points,
        @Note("The ground or deck it stands on") @Preset Site site,
        @Note("The tank: its inside, its weight, its openings") Tank tank,
        @Note("What is in the tank") Slurry slurry,
        @Note("The pivot and its two bearings") Pivot pivot,
        @Note("What pushes the tank over") Drive drive,
        @Note("How far it tips") TiltRange tilt,
        @Note("Friction; left out: by the kind of bearing") @Preset Friction friction,
        @Note("Safety factors; every default is shown by the program") @Preset Factors factors,
        @Note("Your own limits: gaps, angles, leftovers") @Preset Limits limits,
        @Note("Load cases to leave out or to add") @Preset Cases cases,
        @Note("How often it is used") @Preset Use use,
        @Note("What drives the actuators; left out: what the actuator itself is rated for") @Nullable Supply supply,
        @Note("How it is dumped, and the time wanted") @Preset Dump dump,
        @Note("The channel or pit that the slurry runs into") @Nullable Channel channel,
        @Note("Springs and weights that help the actuator, weights of links") @Preset List<Assist> assists,
        @Note("What could go wrong, and how the machine is made against it") @Preset WhatIf whatIf,
        @Note("Where the mounts may go, for 'place'") @Nullable Mounts mounts,
        @Note("What stands still: its weight, its rails, its lifting eye") @Nullable Frame frame,
        @Note("What else is near and must not be hit") @Preset List<SidePart> obstacles,
        @Note("The ground or deck, to keep clear of") @Nullable Ground ground,
        @Note("The pit, kerb or bin that the load falls into") @Nullable Receiver receiver,
        @Note("What it stands on, to see that it does not tip over") @Nullable Footing supports,
        @Note("What the links look like, to keep them clear") @Preset List<LinkPart> links,
        @Note("What links between two pins are made of, to check them") @Preset List<LinkSection> linkSections,
        @Note("Welds, bolts and lugs that hold the joints") @Preset List<Fastening> fastenings,
        @Note("Parts files beside this file, by name") @Counted(atMost = 20) @Preset List<String> parts,
        @Note("How it is driven about, tank stowed; left out: it stays where it is") @Nullable Road road,
        @Note("What rust and use may take away") @Preset Wear wear,
        @Note("The coldest day that it has to work on") @Nullable Cold cold,
        @Note("Two saddles that a lying round tank rests in; left out: brackets on its wall") @Nullable Cradle cradle,
        @Note("What keeps tank and frame from twisting where an actuator pushes beside the middle") @Preset
                Twist twist) {

    /** This design with another slurry. */
    public Design withSlurry(Slurry other) {
        return Copy.with(this, "slurry", other);
    }

    /** This design with another drive. */
    public Design withDrive(Drive other) {
        return Copy.with(this, "drive", other);
    }

    /** This design with another pivot. */
    public Design withPivot(Pivot other) {
        return Copy.with(this, "pivot", other);
    }

    /** Temperature of the coldest day that it works on, K. */
    public double coldest() {
        return cold == null ? site.temperature() : Math.min(site.temperature(), cold.lowest());
    }

    /** This design on other ground. */
    public Design withSite(Site other) {
        return Copy.with(this, "site", other);
    }

    /** This design with another tilt range. */
    public Design withTilt(TiltRange other) {
        return Copy.with(this, "tilt", other);
    }

    /** This design with other springs and weights, and links that look otherwise. */
    public Design withLinks(List<Assist> helpers, List<LinkPart> looks) {
        return Copy.with(Copy.with(this, "assists", helpers), "links", looks);
    }

    /** This design with other fastenings. */
    public Design withFastenings(List<Fastening> other) {
        return Copy.with(this, "fastenings", List.copyOf(other));
    }

    /** This design with another frame. */
    public Design withFrame(@Nullable Frame other) {
        return Copy.with(this, "frame", other);
    }

    /** This design with other load cases. */
    public Design withCases(Cases other) {
        return Copy.with(this, "cases", other);
    }

    /** This design with other friction. */
    public Design withFriction(Friction other) {
        return Copy.with(this, "friction", other);
    }
}
