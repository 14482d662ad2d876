// SPDX-License-Identifier: Apache-2.0
package tipwright.document;

import java.math.BigDecimal;
import java.math.RoundingMode;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Verdict;
import tipwright.design.tank.CaseName;
import tipwright.design.tank.Tank;
import tipwright.quantity.Kind;
import tipwright.quantity.UnitSystem;
import tipwright.report.Scale;

/** Small texts that several parts of a document share. */
final class Words {
    private static final int MOST = 999;

    private Words() {}

    /** Tells a verdict without colour. */
    static String sign(Verdict verdict) {
        return switch (verdict) {
            case PASS -> "+";
            case CLOSE -> "!";
            case FAIL -> "X";
            case NOT_CHECKED -> "?";
        };
    }

    /** Utilisation in whole percent. */
    static String used(Finding f) {
        if (Double.isNaN(f.utilisation())) {
            return "-";
        }
        long percent = Math.round(100 * f.utilisation());
        return percent > MOST ? ">" + MOST + " %" : percent + " %";
    }

    /** A demand or capacity of a finding. */
    static String show(Finding f, double si, UnitSystem units) {
        if (!Double.isFinite(si)) {
            return "-";
        }
        return f.kind() == Kind.RATIO ? Scale.percent().show(si) : f.figure(si).show(units);
    }

    static String where(Finding f, Tank tank) {
        String tilt = Double.isNaN(f.tilt()) ? "" : Scale.angle().show(f.tilt());
        String load = f.loadCase() == null ? "" : CaseName.shown(f.loadCase(), tank);
        return tilt + (tilt.isEmpty() || load.isEmpty() ? "" : ", ") + load;
    }

    /** Tenths of a second; '-' when it never comes. */
    static String seconds(double time) {
        return Double.isFinite(time)
                ? new BigDecimal(time).setScale(1, RoundingMode.HALF_UP).toPlainString() + " s"
                : "-";
    }
}
