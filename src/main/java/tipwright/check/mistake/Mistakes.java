// SPDX-License-Identifier: Apache-2.0
package tipwright.check.mistake;

import java.util.ArrayList;
import java.util.List;
import tipwright.analysis.Analysis;
import tipwright.quantity.Text;

/** What is probably a mistake in the file, each with its figures. Limits by common practice, no source. */
public final class Mistakes {
    private Mistakes() {}

    /** One sentence each; none when nothing is odd. */
    public static List<Text> of(Analysis analysis) {
        List<Text> all = new ArrayList<>(WrongSide.find(analysis));
        all.addAll(WrongUnit.find(analysis.design()));
        all.addAll(TooLight.find(analysis.design()));
        all.addAll(OnTheLine.find(analysis));
        return List.copyOf(all);
    }
}
