// SPDX-License-Identifier: Apache-2.0
package tipwright.quantity;

/** Which units results are shown in. */
public enum UnitSystem {
    METRIC,
    US
}
