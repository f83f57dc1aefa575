package loomwright.site;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/** Hands the one browser of the run to every test that asks for it, and closes it after the last. */
final class WithBrowser implements ParameterResolver, ExecutionCondition {
    private static final ExtensionContext.Namespace NAMESPACE = ExtensionContext.Namespace.create(WithBrowser.class);

    /** Closes the browser when the run ends. */
    private record Held(Browser browser) implements AutoCloseable {
        @Override
        public void close() {
            browser.close();
        }
    }

    @Override
    public ConditionEvaluationResult evaluateExecutionCondition(ExtensionContext context) {
        return "none".equals(System.getProperty("browser"))
                ? ConditionEvaluationResult.disabled("left out with -Dbrowser=none")
                : ConditionEvaluationResult.enabled("");
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Browser.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return context.getRoot()
                .getStore(NAMESPACE)
                .getOrComputeIfAbsent("browser", key -> new Held(start()), Held.class)
                .browser();
    }

    private static Browser start() {
        try {
            return new Browser();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
