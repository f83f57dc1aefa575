package loomwright.site;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "loomwright", importOptions = ImportOption.DoNotIncludeTests.class)
class LayersTest {
    @ArchTest
    static final ArchRule nothingUsesThePageProgram = noClasses()
            .that()
            .resideOutsideOfPackage("loomwright.browser..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("loomwright.browser..");

    @ArchTest
    static final ArchRule onlyThePageProgramTouchesTheBrowser = noClasses()
            .that()
            .resideOutsideOfPackage("loomwright.browser..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.teavm..");

    @ArchTest
    static final ArchRule thePageProgramUsesOnlyCalculatorsAndTheBrowser = classes()
            .that()
            .resideInAPackage("loomwright.browser..")
            .should()
            .onlyDependOnClassesThat()
            .resideInAnyPackage(
                    "java.lang..",
                    "java.util..",
                    "org.teavm.jso..",
                    "loomwright.browser..",
                    "loomwright.catalogue..",
                    "loomwright.circuit..",
                    "loomwright.markup..",
                    "loomwright.practice..",
                    "loomwright.worked..",
                    "loomwright.turned..",
                    "loomwright.units..",
                    "loomwright.plan..",
                    "loomwright.along..",
                    "loomwright.workshop..",
                    "loomwright.quantity..",
                    "loomwright.graph..",
                    "loomwright.handout..",
                    "loomwright.picture..");

    @ArchTest
    static final ArchRule calculatorsUseNeitherGeneratorNorPageProgram = noClasses()
            .that()
            .resideOutsideOfPackages("loomwright.generator..", "loomwright.browser..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("loomwright.generator..", "loomwright.browser..");

    @ArchTest
    static final ArchRule theGeneratorKnowsNothingOfThePageProgram = noClasses()
            .that()
            .resideInAPackage("loomwright.generator..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("loomwright.browser..");
}
