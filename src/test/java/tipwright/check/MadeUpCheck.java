// SPDX-License-Identifier: Apache-2.0
package tipwright.check;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import tipwright.analysis.Analysis;
import tipwright.check.rule.Check;
import tipwright.check.rule.Finding;
import tipwright.check.rule.Trait;

/** A check that finds what it is told to, for tests of what goes round the checks. */
public record MadeUpCheck(String id, Set<Trait> traits, Function<Analysis, List<Finding>> found) implements Check {
    @Override
    public String title() {
        return "Told " + id;
    }

    @Override
    public String rule() {
        return "";
    }

    @Override
    public String formula() {
        return "";
    }

    @Override
    public String source() {
        return "";
    }

    @Override
    public List<Finding> run(Analysis analysis) {
        return found.apply(analysis);
    }
}
