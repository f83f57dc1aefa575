package loomwright.generator.page;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import loomwright.catalogue.Catalogue;
import loomwright.catalogue.Subject;
import loomwright.generator.example.Example;
import loomwright.worked.Calculator;

/** Which subjects have worked examples on which page, so that a page loads the programs it needs and no more. */
final class SubjectsOfPages {
    private final Map<String, String> subjectOfCalculator = new HashMap<>();
    private final Map<String, Set<String>> subjectsOfPage = new HashMap<>();

    SubjectsOfPages(Site site) {
        for (Subject subject : Catalogue.subjects()) {
            for (Calculator calculator : subject.calculators()) {
                subjectOfCalculator.put(calculator.description().key(), subject.name());
            }
        }
        for (String key : site.calculators().keySet()) {
            add(Address.calculator(key), key);
        }
        for (Example example : site.book().all()) {
            add(example.article().address(), example.calculator().description().key());
        }
    }

    private void add(String address, String calculatorKey) {
        String subject = subjectOfCalculator.get(calculatorKey);
        if (subject != null) {
            subjectsOfPage.computeIfAbsent(address, each -> new TreeSet<>()).add(subject);
        }
    }

    static boolean isSubject(String name) {
        return Catalogue.subjects().stream().anyMatch(subject -> subject.name().equals(name));
    }

    /** The name of the subject a calculator belongs to, or an empty text: calculators of tests belong to none. */
    static String subjectOf(String calculatorKey) {
        return Catalogue.subjects().stream()
                .filter(subject -> subject.find(calculatorKey) != null)
                .map(Subject::name)
                .findFirst()
                .orElse("");
    }

    Set<String> of(String address) {
        return subjectsOfPage.getOrDefault(address, Set.of());
    }
}
