// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

/** The end of a revolved tank, inside dimensions; no straight flange (count it as shell). */
public sealed interface Head {
    /** A flat plate. */
    record Flat() implements Head {
        @Override
        public double depth(double diameter) {
            return 0;
        }
    }

    /**
     * Half an ellipsoid.
     *
     * @param depthShare depth over inside diameter, above 0: 0.5 is a hemisphere, 0.25 the usual 2:1 head
     */
    record Ellipsoidal(double depthShare) implements Head {
        public Ellipsoidal {
            positive("depth", depthShare);
        }

        @Override
        public double depth(double diameter) {
            return depthShare * diameter;
        }
    }

    /**
     * A dish cut from a sphere, with a corner at the shell.
     *
     * @param depthShare depth over inside diameter, above 0, at most 0.5
     */
    record Dished(double depthShare) implements Head {
        public Dished {
            positive("depth", depthShare);
            if (depthShare > 0.5) {
                throw new ShapeException(
                        "a dished head is no deeper than half the diameter, not " + depthShare + " of it");
            }
        }

        @Override
        public double depth(double diameter) {
            return depthShare * diameter;
        }
    }

    /**
     * A cone to a point.
     *
     * @param depthShare depth over inside diameter, above 0
     */
    record Conical(double depthShare) implements Head {
        public Conical {
            positive("depth", depthShare);
        }

        @Override
        public double depth(double diameter) {
            return depthShare * diameter;
        }
    }

    /**
     * Crown and knuckle, tangent to each other and to the shell.
     *
     * @param crown inside crown radius over inside diameter, above 0.5
     * @param knuckle inside knuckle radius over inside diameter, above 0, below 0.5
     */
    record Torispherical(double crown, double knuckle) implements Head {
        public Torispherical {
            positive("crown radius", crown);
            positive("knuckle radius", knuckle);
            if (crown <= 0.5 || knuckle >= 0.5) {
                throw new ShapeException("a torispherical head has its crown radius above and its knuckle radius below "
                        + "half the diameter; given were " + crown + " and " + knuckle + " of the diameter");
            }
        }

        @Override
        public double depth(double diameter) {
            double turn = turn();
            return diameter * (crown * (1 - Math.cos(turn)) + knuckle * Math.cos(turn));
        }

        /** Angle at the crown's centre between the axis and the knuckle, rad. */
        double turn() {
            return Math.asin((0.5 - knuckle) / (crown - knuckle));
        }
    }

    /** A flat plate. */
    static Head flat() {
        return new Flat();
    }

    /** Half a sphere. */
    static Head hemispherical() {
        return new Ellipsoidal(0.5);
    }

    /** The usual 2:1 semi-ellipsoidal head, a quarter of the diameter deep. */
    static Head semiEllipsoidal() {
        return new Ellipsoidal(0.25);
    }

    /** Crown radius 1.0 and knuckle radius 0.06 of the inside diameter. */
    static Head torispherical() {
        return new Torispherical(1, 0.06);
    }

    /**
     * Depth from the tangent line to the tip, m.
     *
     * @param diameter inside, m
     */
    double depth(double diameter);

    private static void positive(String what, double share) {
        if (!(share > 0 && share < 1e3)) {
            throw new ShapeException("the " + what + " of a head must be above 0, not " + share + " of the diameter");
        }
    }
}
