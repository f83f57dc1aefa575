package loomwright.generator;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;

/** Libraries stay in the package that is there for them, and packages do not run in circles. */
@AnalyzeClasses(packages = "loomwright.generator", importOptions = ImportOption.DoNotIncludeTests.class)
class LayersTest {
    @ArchTest
    static final ArchRule MARKDOWN_LIBRARY_STAYS_IN_ITS_PACKAGE = noClasses()
            .that()
            .resideOutsideOfPackage("loomwright.generator.markdown..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("com.vladsch..");

    @ArchTest
    static final ArchRule TEMPLATE_LIBRARY_STAYS_IN_ITS_PACKAGE = noClasses()
            .that()
            .resideOutsideOfPackage("loomwright.generator.page..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("com.github.mustachejava..");

    @ArchTest
    static final ArchRule YAML_LIBRARY_STAYS_IN_ITS_PACKAGE = noClasses()
            .that()
            .resideOutsideOfPackage("loomwright.generator.content..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.snakeyaml..");

    @ArchTest
    static final ArchRule HTML_PARSER_STAYS_IN_ITS_PACKAGE = noClasses()
            .that()
            .resideOutsideOfPackage("loomwright.generator.check..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("org.jsoup..");

    @ArchTest
    static final ArchRule NOTHING_KNOWS_THE_PAGE_PROGRAM =
            noClasses().should().dependOnClassesThat().resideInAPackage("loomwright.browser..");

    @ArchTest
    static final ArchRule NO_CIRCLES = slices().matching("loomwright.generator.(*)..").should().beFreeOfCycles();
}
