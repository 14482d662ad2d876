// SPDX-License-Identifier: Apache-2.0
package tipwright.design.supply;

import tipwright.design.key.Choice;

/** What drives the actuators. Adding a kind: one record and its name in the permits clause. */
@Choice("kind")
public sealed interface Supply permits Battery, Pump, HandPump, HandWinch {}
