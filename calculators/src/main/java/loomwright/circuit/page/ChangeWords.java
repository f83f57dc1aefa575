package loomwright.circuit.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import loomwright.circuit.check.CircuitFinding;
import loomwright.circuit.check.Examination;
import loomwright.circuit.check.FindingGroup;
import loomwright.circuit.sheet.Designations;
import loomwright.worked.Verdict;

/** What a change brought, in one or two sentences: what is new to change or to decide, and what is settled. */
public final class ChangeWords {
    private static final int MOST_NAMED = 2;

    private ChangeWords() {}

    /** The words; empty if either could not be examined. */
    public static String of(Examination before, Examination after) {
        if (before == null || before.worst() == null || after.worst() == null) {
            return "";
        }
        Map<String, Verdict> was = verdicts(before);
        Map<String, Verdict> is = verdicts(after);
        List<CircuitFinding> stops = new ArrayList<>();
        List<CircuitFinding> cautions = new ArrayList<>();
        for (CircuitFinding finding : after.findings()) {
            Verdict verdict = finding.finding().verdict();
            Verdict former = was.get(key(finding));
            if (matters(verdict) && (former == null || verdict.isWorseThan(former))) {
                (verdict == Verdict.STOP ? stops : cautions).add(finding);
                was.put(key(finding), verdict);
            }
        }
        List<CircuitFinding> settled = new ArrayList<>();
        for (CircuitFinding finding : before.findings()) {
            if (matters(finding.finding().verdict()) && !matters(is.get(key(finding))) && after.circuit().part(finding.partId()) != null) {
                settled.add(finding);
                is.put(key(finding), finding.finding().verdict());
            }
        }
        Designations designations = Designations.of(after.circuit());
        String words = said("New to change: ", stops, designations) + said("New to decide: ", cautions, designations) + said("Settled: ", settled, designations);
        return (words.isEmpty() ? "Nothing new: " : words + "Now ") + counted(after);
    }

    /** How much there is to change and to decide. */
    public static String counted(Examination examination) {
        return FindingGroup.counted(examination.count(Verdict.STOP), "thing") + " to change, " + FindingGroup.counted(examination.count(Verdict.CAUTION), "thing")
                + " to decide.";
    }

    private static boolean matters(Verdict verdict) {
        return verdict == Verdict.STOP || verdict == Verdict.CAUTION;
    }

    /** The worst verdict of each check at each part; findings stand worst first. */
    private static Map<String, Verdict> verdicts(Examination examination) {
        Map<String, Verdict> verdicts = new HashMap<>();
        for (CircuitFinding finding : examination.findings()) {
            verdicts.putIfAbsent(key(finding), finding.finding().verdict());
        }
        return verdicts;
    }

    private static String key(CircuitFinding finding) {
        return finding.check().ordinal() + " " + finding.partId();
    }

    private static String said(String lead, List<CircuitFinding> findings, Designations designations) {
        if (findings.isEmpty()) {
            return "";
        }
        StringBuilder words = new StringBuilder(lead);
        for (int i = 0; i < findings.size() && i < MOST_NAMED; i++) {
            words.append(i == 0 ? "" : "; ").append(findings.get(i).check().label()).append(", ").append(designations.titled(findings.get(i).partId()));
        }
        int more = findings.size() - MOST_NAMED;
        return words.append(more > 0 ? "; and " + more + " more. " : ". ").toString();
    }
}
