// SPDX-License-Identifier: Apache-2.0
package tipwright.design.steel;

import org.jspecify.annotations.Nullable;
import tipwright.design.key.Choice;
import tipwright.design.key.Measured;
import tipwright.design.key.Note;
import tipwright.geometry.Vec3;
import tipwright.geometry.stock.RoundedTube;
import tipwright.quantity.Kind;

/**
 * A square or rectangular tube with rounded corners, 2 t outside and t inside.
 *
 * @param height in the side view, m
 * @param width along the pivot, m; null: as the height
 * @param wall m
 * @param from one end, at the middle of the section, m, stowed
 * @param to the other end
 */
@Choice("tube")
public record TubePiece(
        @Note("Outside, in the side view") @Measured(value = Kind.LENGTH, above = "0 mm") double height,
        @Note("Outside, along the pivot; left out: square") @Measured(value = Kind.LENGTH, above = "0 mm") @Nullable
                Double width,
        @Note("As bought: 11 ga, 3/16 in, 4 mm") @Measured(value = Kind.LENGTH, above = "0 mm", sheet = true)
                double wall,
        @Note("One end, at the middle of the section, tank stowed") @Measured(Kind.LENGTH) Vec3 from,
        @Note("The other end") @Measured(Kind.LENGTH) Vec3 to)
        implements LongSteel {
    @Override
    public Stretched stretched() {
        return new Stretched(from, to, height, wide());
    }

    @Override
    public double area() {
        return isSound() ? new RoundedTube(height, wide(), wall).area() : Double.NaN;
    }

    /** Whether there is room in it for its rounded corners: no side is under four walls. */
    public boolean isSound() {
        return wall > 0 && height >= 4 * wall && wide() >= 4 * wall;
    }

    private double wide() {
        return width == null ? height : width;
    }
}
