// SPDX-License-Identifier: Apache-2.0
package tipwright.design.drive;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import tipwright.design.actuator.Actuator;
import tipwright.design.actuator.PlacedActuator;
import tipwright.design.joint.Guide;
import tipwright.design.joint.PinJoint;
import tipwright.design.key.Choice;
import tipwright.design.key.Copy;
import tipwright.geometry.Vec2;
import tipwright.linkage.Joint;
import tipwright.linkage.Skeleton;

/**
 * What pushes the tank over. Adding a mechanism: one record that tells its skeleton, and its name in the permits clause.
 *
 * <p>Names of pins that every mechanism shares: 'pivot' sits in the two bearings, 'frame-pin' and 'rod-pin' are the actuator's
 * ends.
 */
@Choice("")
public sealed interface Drive permits Straight, LinkedDrive, Free {
    String FRAME_PIN = "frame-pin";
    String ROD_PIN = "rod-pin";
    String TANK_PIN = "tank-pin";

    /**
     * The mechanism in the side view, stowed.
     *
     * @param pivot the axis of the two bearings, m
     */
    Skeleton skeleton(Vec2 pivot);

    /**
     * How far apart the actuator's two pins are, stowed, m.
     *
     * @param pivot the axis of the two bearings, m
     */
    default double stowedLength(Vec2 pivot) {
        Skeleton skeleton = skeleton(pivot);
        return skeleton.actuator().onB().minus(skeleton.actuator().onA()).norm();
    }

    /** The same parts with every pin, carriage and end of the actuator where the operator puts it. */
    default Drive moved(UnaryOperator<Vec2> places) {
        return (Drive) Copy.moved((Record) this, places);
    }

    /** The same pins with another actuator in every place. */
    default Drive with(Actuator other) {
        return (Drive) Copy.with((Record) this, "actuators", PlacedActuator.all(actuators(), other));
    }

    /** The same pins with these actuators alone. */
    default Drive with(List<PlacedActuator> others) {
        return (Drive) Copy.with((Record) this, "actuators", others);
    }

    /**
     * Every place that is welded or drilled, m, by the name that the design file gives it; two names may be one place.
     *
     * @param pivot the axis of the two bearings, m
     */
    default Map<String, Vec2> places(Vec2 pivot) {
        Skeleton skeleton = skeleton(pivot);
        Map<String, Vec2> places = new LinkedHashMap<>();
        places.put(Skeleton.PIVOT, pivot);
        places.put(FRAME_PIN, skeleton.actuator().onA());
        places.put(rodPinName(), skeleton.actuator().onB());
        for (Joint joint : skeleton.joints()) {
            places.putIfAbsent(guide(joint.name()) == null ? joint.name() : slideKey(joint.name()), joint.at());
        }
        return places;
    }

    /** Name of the actuator's moving end among the places. */
    default String rodPinName() {
        return ROD_PIN;
    }

    /** Whether there is nothing but the tank on its pivot and the actuator straight between it and the frame. */
    default boolean direct() {
        return false;
    }

    /** How a section 'mounts:' gives the zones of such a drive, for messages. */
    default String zonesByExample() {
        return "'places:', a zone for each pin that may move, see the example crank-cart";
    }

    /** The key of the file that tells where a slide's carriage is. */
    default String slideKey(String slide) {
        return "carriage";
    }

    /** The actuators, each with its place along z; side by side in the side view. */
    List<PlacedActuator> actuators();

    /** What is known of a pin by its name; null when nothing is. */
    @Nullable
    PinJoint pinJoint(String name);

    /** The same with these dimensions of a pin. */
    Drive withPin(String name, PinJoint joint);

    /** The names of all pins of a place in {@link #places}, and of the actuator's ends. */
    default Set<String> pinNames(Vec2 pivot) {
        Set<String> names = new LinkedHashSet<>(List.of(FRAME_PIN, ROD_PIN));
        names.addAll(places(pivot).keySet());
        return names;
    }

    /** Where a pin's data belong in the file, for messages. */
    default String pinKey(String name) {
        return "drive: pins: '" + name + "'";
    }

    /** Whether a joint is made twice, once on each side of the machine, so that each of the two bears half. */
    default boolean paired(String joint) {
        return false;
    }

    /** What is known of a slide by its name; null when it is no slide. */
    default @Nullable Guide guide(String slide) {
        return null;
    }

    /** The pin that holds the actuator at its fixed end; null when nothing is known of it. */
    default @Nullable PinJoint framePinJoint() {
        return pinJoint(FRAME_PIN);
    }

    /** The pin that holds the actuator at its moving end; null when nothing is known of it. */
    default @Nullable PinJoint tankPinJoint() {
        return pinJoint(ROD_PIN);
    }
}
