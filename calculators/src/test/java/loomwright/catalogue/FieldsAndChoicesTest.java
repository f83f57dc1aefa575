package loomwright.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import loomwright.circuit.DrilledPanel;
import loomwright.circuit.PartKind;
import loomwright.plan.PlanFields;
import loomwright.worked.Choice;
import loomwright.worked.ChoiceField;
import loomwright.worked.Field;
import org.junit.jupiter.api.Test;

/** Every list of choices, and every field that one place lends to another, wherever it stands. */
class FieldsAndChoicesTest {
    private static List<Class<?>> classes() throws IOException {
        Path root = Path.of("target", "classes");
        List<Class<?>> classes = new ArrayList<>();
        try (Stream<Path> files = Files.walk(root)) {
            for (Path file : files.filter(each -> each.toString().endsWith(".class") && !each.endsWith("package-info.class")).toList()) {
                String name = root.relativize(file).toString().replace(file.getFileSystem().getSeparator(), ".");
                classes.add(Class.forName(name.substring(0, name.length() - ".class".length()), false, FieldsAndChoicesTest.class.getClassLoader()));
            }
        } catch (ClassNotFoundException fault) {
            throw new AssertionError(fault);
        }
        return classes;
    }

    @Test
    void everyChoiceHasAKeyForFilesAndALabelForReadersOfItsOwn() throws IOException {
        int lists = 0;
        for (Class<?> each : classes()) {
            if (each.isEnum() && Choice.class.isAssignableFrom(each)) {
                lists++;
                Set<String> keys = new HashSet<>();
                Set<String> labels = new HashSet<>();
                for (Object constant : each.getEnumConstants()) {
                    Choice choice = (Choice) constant;
                    assertTrue(choice.key().matches("[a-z0-9.-]+"), each + " " + choice.key());
                    assertEquals(choice.label().strip(), choice.label());
                    assertFalse(choice.label().isEmpty(), each + " " + choice.key());
                    assertTrue(keys.add(choice.key()) && labels.add(choice.label()), each + " has two of " + choice.label());
                }
            }
        }
        assertTrue(lists >= 20, lists + " lists");
    }

    /** A field that is asked in several places is made in one, so every one that is lent must be asked somewhere, with the same label. */
    @Test
    void everyFieldThatIsLentIsAskedSomewhere() throws Exception {
        Set<String> asked = new HashSet<>();
        Catalogue.all().forEach(calculator -> calculator.description().fields().forEach(field -> asked.add(field.key() + " " + field.label())));
        for (PartKind kind : PartKind.values()) {
            kind.fields().forEach(field -> asked.add(field.key() + " " + field.label()));
        }
        Stream.of(PlanFields.ITEM, PlanFields.JOB, DrilledPanel.FIELDS).flatMap(List::stream).forEach(field -> asked.add(field.key() + " " + field.label()));
        int lent = 0;
        for (Class<?> each : classes()) {
            for (Method method : each.getDeclaredMethods()) {
                boolean lends = Field.class.isAssignableFrom(method.getReturnType()) || method.getGenericReturnType().toString().equals("java.util.List<" + Field.class.getName() + ">");
                if (Modifier.isStatic(method.getModifiers()) && method.getParameterCount() == 0 && lends && !method.isSynthetic()) {
                    method.setAccessible(true);
                    Object result = method.invoke(null);
                    assertNotNull(result, method.toString());
                    List<?> fields = result instanceof Field field ? List.of(field) : (List<?>) result;
                    assertFalse(fields.isEmpty(), method.toString());
                    for (Object one : fields) {
                        Field field = (Field) one;
                        lent++;
                        assertTrue(asked.contains(field.key() + " " + field.label()), method + " lends " + field.key() + " " + field.label());
                        assertTrue(!(field instanceof ChoiceField choice) || choice.option(choice.usual()) != null, method + ": " + field.usual());
                    }
                }
            }
        }
        assertTrue(lent >= 40, lent + " fields");
    }
}
