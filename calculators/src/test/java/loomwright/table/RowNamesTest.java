package loomwright.table;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every row that the program names exists. Names stand in the sources as {@code PublishedTables.table().row("name")}, or are handed to a
 * method that does nothing but look the row up; both are collected here. A kind of something that has a row of its own is asked for it.
 */
class RowNamesTest {
    private static final Pattern NAMED = Pattern.compile("PublishedTables\\s*\\.(\\w+)\\(\\)\\s*\\.row\\(\"([^\"]*)\"\\)");
    private static final Pattern LOOK_UP = Pattern.compile(
            "static Row (\\w+)\\(String (\\w+)\\) \\{\\s*return PublishedTables\\.(\\w+)\\(\\)\\.row\\(\\2\\);");
    private static final Pattern KIND = Pattern.compile("\\benum (\\w+)[^{]*\\{");

    record Use(String where, String table, String row) {}

    @TestFactory
    Stream<DynamicTest> everyNamedRowExists() throws IOException {
        List<Use> uses = uses();
        assertTrue(uses.size() > 50, "only " + uses.size() + " uses were found: the patterns no longer fit the sources");
        return uses.stream().map(use -> DynamicTest.dynamicTest(use.where() + " " + use.row(), () -> table(use.table()).row(use.row())));
    }

    @TestFactory
    Stream<DynamicTest> everyKindWithARowOfItsOwnHasIt() throws IOException {
        List<DynamicTest> tests = new ArrayList<>();
        for (Path file : sources()) {
            Matcher kind = KIND.matcher(Files.readString(file));
            if (kind.find() && Files.readString(file).matches("(?s).*return PublishedTables\\.\\w+\\(\\)\\.row\\(.*")) {
                Class<?> type = assertDoesNotThrow(() -> Class.forName(className(file)));
                for (Method method : type.getDeclaredMethods()) {
                    if (method.getReturnType() == Row.class && method.getParameterCount() == 0) {
                        method.setAccessible(true);
                        for (Object each : type.getEnumConstants()) {
                            tests.add(DynamicTest.dynamicTest(type.getSimpleName() + " " + each, () -> ask(method, each)));
                        }
                    }
                }
            }
        }
        assertTrue(tests.size() > 20, tests.size() + " kinds");
        return tests.stream();
    }

    /** A kind whose figures the reader enters has no row, and no name or the name {@code given} in its place. */
    private static void ask(Method method, Object kind) throws ReflectiveOperationException {
        try {
            method.invoke(kind);
        } catch (InvocationTargetException e) {
            assertTrue(e.getCause().getMessage().matches(".* has no row “(given)?”"), e.getCause().toString());
        }
    }

    @Test
    void aRowThatDoesNotExistIsNamedWithItsTable() {
        Table table = PublishedTables.voltageDropAllowance();
        assertEquals(
                "the table voltage-drop-allowance has no row “abyc-mian”",
                assertThrows(IllegalArgumentException.class, () -> table.row("abyc-mian")).getMessage());
        assertEquals(
                "the table voltage-drop-allowance has no column “alowance”",
                assertThrows(IllegalArgumentException.class, () -> table.row("abyc-main").quantity("alowance")).getMessage());
    }

    private static List<Use> uses() throws IOException {
        List<Use> uses = new ArrayList<>();
        for (Path file : sources()) {
            String text = Files.readString(file);
            String simple = file.getFileName().toString().replace(".java", "");
            NAMED.matcher(text).results().forEach(found -> uses.add(new Use(simple, found.group(1), found.group(2))));
            for (MatchResult lookUp : LOOK_UP.matcher(text).results().toList()) {
                uses.addAll(handedTo(file, simple, lookUp.group(1), lookUp.group(3)));
            }
        }
        return uses;
    }

    /** The names handed to a method: bare in its own file, after the name of its class elsewhere. */
    private static List<Use> handedTo(Path home, String type, String method, String table) throws IOException {
        List<Use> uses = new ArrayList<>();
        for (Path file : sources()) {
            String call = file.equals(home) ? "(?<![\\w.])" + method : "\\b" + type + "\\." + method;
            Pattern.compile(call + "\\(\"([^\"]*)\"\\)").matcher(Files.readString(file)).results()
                    .forEach(found -> uses.add(new Use(file.getFileName().toString(), table, found.group(1))));
        }
        return uses;
    }

    private static Table table(String method) throws ReflectiveOperationException {
        return (Table) PublishedTables.class.getMethod(method).invoke(null);
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            return files.filter(file -> file.toString().endsWith(".java")).sorted().toList();
        }
    }

    private static String className(Path file) {
        return Path.of("src/main/java").relativize(file).toString().replace(".java", "").replace('/', '.');
    }
}
