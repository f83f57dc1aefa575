package loomwright.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.Set;

/** What the calculators may use: plain Java, few parts of it, and no circles between packages. */
@AnalyzeClasses(packages = "loomwright", importOptions = ImportOption.DoNotIncludeTests.class)
class LayersTest {
    @ArchTest
    static final ArchRule PLAIN_JAVA_ONLY =
            classes().should().onlyDependOnClassesThat().resideInAnyPackage("loomwright..", "java.lang..", "java.util");

    @ArchTest
    static final ArchRule NO_CIRCLES = slices().matching("loomwright.(*)..").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule QUANTITY_STANDS_ALONE = noClasses()
            .that()
            .resideInAPackage("loomwright.quantity..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("loomwright.formula..", "loomwright.worked..", "loomwright.table..");

    /** Inside the circuit: the model knows nothing of what is worked out from it, a file nothing but the model. */
    @ArchTest
    static final ArchRule CIRCUIT_IN_LAYERS = layeredArchitecture()
            .consideringOnlyDependenciesInAnyPackage("loomwright.circuit..")
            .layer("model").definedBy("loomwright.circuit")
            .layer("solve").definedBy("loomwright.circuit.solve..")
            .optionalLayer("check").definedBy("loomwright.circuit.check..")
            .optionalLayer("file").definedBy("loomwright.circuit.file..")
            .optionalLayer("sheet").definedBy("loomwright.circuit.sheet..")
            .whereLayer("model").mayNotAccessAnyLayer()
            .whereLayer("solve").mayOnlyAccessLayers("model")
            .whereLayer("check").mayOnlyAccessLayers("model", "solve")
            .whereLayer("sheet").mayOnlyAccessLayers("model", "solve", "check")
            .whereLayer("file").mayOnlyAccessLayers("model");

    @ArchTest
    static final ArchRule NO_CALCULATOR_KNOWS_THE_CIRCUIT = noClasses()
            .that()
            .resideOutsideOfPackages("loomwright.circuit..", "loomwright.plan..")
            .should()
            .dependOnClassesThat()
            .resideInAPackage("loomwright.circuit..");

    /**
     * Calls that the compiler of the page's program cannot take, answers differently, or pays for with kilobytes. Text joined with
     * {@code +} is compiled to StringBuilder calls or to an invokedynamic, so a double in it cannot be seen here; the parity tests see it.
     */
    private static final Set<String> BANNED = Set.of(
            "java.lang.String.format", "java.lang.String.split", "java.lang.String.matches", "java.lang.String.replaceAll",
            "java.lang.String.replaceFirst", "java.lang.String.formatted", "java.lang.Enum.valueOf", "java.lang.Double.parseDouble",
            "java.lang.Double.toString", "java.lang.Float.parseFloat", "java.lang.Math.rint",
            "java.lang.Math.sinh", "java.lang.Math.tanh", "java.lang.Math.cosh", "java.lang.Math.expm1", "java.lang.Math.log1p",
            "java.lang.Math.log10", "java.lang.Math.cbrt", "java.lang.Math.hypot", "java.lang.Math.toRadians", "java.lang.Math.round",
            "java.util.stream.Collectors.joining", "java.lang.Character.isLetter", "java.lang.Character.isDigit");

    @ArchTest
    static final ArchRule NOTHING_THE_BROWSER_CANNOT_DO = classes().should(new ArchCondition<JavaClass>("call only what works alike") {
        @Override
        public void check(JavaClass javaClass, ConditionEvents events) {
            for (JavaCall<?> call : javaClass.getMethodCallsFromSelf()) {
                String called = call.getTargetOwner().getName() + "." + call.getTarget().getName();
                boolean doubleToText = called.equals("java.lang.String.valueOf")
                        && call.getTarget().getRawParameterTypes().get(0).getName().equals("double");
                if (BANNED.contains(called) && !isGeneratedByTheCompiler(call) || doubleToText) {
                    events.add(SimpleConditionEvent.violated(javaClass, call.getDescription()));
                }
            }
        }
    });

    @ArchTest
    static final ArchRule NO_ENUM_MAPS_OR_REGEX =
            noClasses().should().dependOnClassesThat().haveNameMatching("java\\.util\\.(EnumMap|EnumSet|Formatter|Scanner|regex\\..*)");

    /** Every enum has a valueOf of its own. */
    private static boolean isGeneratedByTheCompiler(JavaCall<?> call) {
        return call.getOwner().getName().equals("valueOf") && call.getOriginOwner().isEnum();
    }
}
