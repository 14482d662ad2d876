// SPDX-License-Identifier: Apache-2.0
package tipwright.strength;

/**
 * What pressure does to a flat wall.
 *
 * @param direct greatest bending stress across or up the wall, Pa: what the tables of plates give
 * @param equivalent greatest equivalent stress, Pa (von Mises), twist at the corners included
 * @param moved most that the wall gives way, m
 * @param edgeMoment greatest bending moment of the rim, N m
 * @param linear whether the wall gives way by at most half its thickness, where the figures hold; beyond it they are on the safe side
 */
public record PlateBending(double direct, double equivalent, double moved, double edgeMoment, boolean linear) {}
