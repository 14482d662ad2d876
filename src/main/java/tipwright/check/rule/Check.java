// SPDX-License-Identifier: Apache-2.0
package tipwright.check.rule;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Supplier;
import tipwright.analysis.Analysis;
import tipwright.design.Limits;
import tipwright.design.key.NameId;
import tipwright.outline.PartKind;
import tipwright.quantity.Text;
import tipwright.quantity.UnitSystem;
import tipwright.time.Timing;

/**
 * One rule, which tells all about itself: no one else keeps a list of checks by their ids. Adding a check: one class in the room of
 * its part, and one line in the registry.
 */
public interface Check {
    /** Short name, as typed after 'explain'. */
    String id();

    /** In the trade's words. */
    String title();

    /** The rule, in plain words. */
    String rule();

    /** The formula, with its symbols named. */
    String formula();

    /** Standard, handbook or 'common practice, no source'. */
    String source();

    /** What those who run it have to know. */
    Set<Trait> traits();

    /**
     * What would fix it: part of a sentence; empty when there is nothing to say.
     *
     * @param finding one of this check's, that fails or is close
     */
    default Text fix(Finding finding, Limits limits) {
        return Fix.part(finding, limits);
    }

    /**
     * What stands in the way of a mount, in few words for a map; empty when the check bounds no mounts.
     *
     * @param id of a finding of this check's, or of the check
     */
    default String bound(String id) {
        return "";
    }

    /** Ids of findings of this check's that each bound the mounts in another way. */
    default List<String> bounding() {
        return List.of(id());
    }

    /**
     * What of a part would open a place that this check alone forbids, with '{more}' ('12 % more') and '{actuator}' put in; empty when
     * no change of a part does.
     */
    default String opener() {
        return "";
    }

    /**
     * The title of a finding: 'part: what can go wrong'.
     *
     * @param part after the slash of the id, with blanks; empty: none
     */
    default String title(String part) {
        return part.isEmpty() ? title() : title() + ", " + part;
    }

    /** What it looks at, in a word or two for a list: 'lugs'. */
    default String shortly(Finding finding) {
        return Titles.part(finding.title()).toLowerCase(Locale.ROOT);
    }

    /** Whether a finding of this check's is about what a bearing is rated for. */
    default boolean ratesBearing(int bearing, Finding finding) {
        return false;
    }

    /** What has gone wrong, where a finding of this check's is about that: 'Wheel sinks'; empty: nothing has. */
    default String trouble(Finding finding) {
        return "";
    }

    /** What a finding of this check's says, with its numbers: 'Tank: clearance needs 20 mm, has 25 mm'. Where it happens stands before it. */
    default Text says(Finding finding) {
        Text numbers = finding.byWords();
        return Text.words(finding.title() + ": ").plus(numbers);
    }

    /** What has to be changed where no one change that was tried helps; empty where {@link #says} tells that already. */
    default Text takes(Finding finding) {
        return Text.NONE;
    }

    /** The part that a finding of this check's is about, in few words: 'weld frame pin'. */
    default String part(Finding finding) {
        return NameId.words(finding.id().replace('/', ' '));
    }

    /** Kinds of parts that it looks at, as far as they are to be seen. */
    default Set<PartKind> looksAt() {
        return Set.of();
    }

    /** Which parts a finding of this check's is about: of the kinds that it looks at those that its id names, or all. */
    default Concerned concerned(Analysis analysis, Finding finding) {
        return Concerned.of(looksAt(), finding);
    }

    /** Whether a finding is one of this check's. */
    default boolean owns(Finding finding) {
        return finding.isOf(id());
    }

    /** One finding for each part that it looks at; never empty: what cannot be checked says so. */
    List<Finding> run(Analysis analysis);

    /**
     * The formula with the numbers of a finding put in, for a reader who checks by hand; empty when demand and capacity tell it all.
     *
     * @param finding one of this check's
     */
    default String worked(Analysis analysis, Finding finding, UnitSystem units) {
        return "";
    }

    /** What {@link #run(Analysis)} finds, in pieces of work that may be done side by side: what they find, one after the other. */
    default List<Supplier<List<Finding>>> pieces(Analysis analysis) {
        return List.of(() -> run(analysis));
    }

    /** What pieces of work find, done one after the other. */
    static List<Finding> joined(List<Supplier<List<Finding>>> pieces) {
        return pieces.stream().flatMap(p -> p.get().stream()).toList();
    }

    /**
     * What {@link #run(Analysis, Timing)} finds, in pieces of work that may be done side by side: what they find, one after the other.
     *
     * @param timing the dump in time, asked for by a piece when it is done
     */
    default List<Supplier<List<Finding>>> pieces(Analysis analysis, Supplier<Timing> timing) {
        return List.of(() -> run(analysis, timing.get()));
    }

    /** As {@link #run(Analysis)}, with the dump in time beside it. */
    default List<Finding> run(Analysis analysis, Timing timing) {
        return run(analysis);
    }
}
