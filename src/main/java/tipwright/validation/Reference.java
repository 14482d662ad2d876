// SPDX-License-Identifier: Apache-2.0
package tipwright.validation;

/**
 * What one of the program's figures should be.
 *
 * @param group such as 'columns'
 * @param id unlike any other
 * @param quantity in the trade's words
 * @param unit of value and tolerance
 * @param value that the source gives
 * @param tolerance largest deviation that the source's digits allow
 * @param mark what it rests on
 * @param source where it is from
 */
public record Reference(
        String group,
        String id,
        String quantity,
        String unit,
        double value,
        double tolerance,
        Basis mark,
        String source) {}
