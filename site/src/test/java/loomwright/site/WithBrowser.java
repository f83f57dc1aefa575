package loomwright.site;

import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.ConditionEvaluationResult;
import org.junit.jupiter.api.extension.ExecutionCondition;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Hands the one browser of this Java to every test that asks for it. To start one takes longer than most classes of tests, so the next class gets it
 * as a new one would be; it is closed when this Java ends.
 */
final class WithBrowser implements ParameterResolver, ExecutionCondition, AfterAllCallback {
    private static Browser browser;

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
        if (browser == null) {
            browser = new Browser();
            Runtime.getRuntime().addShutdownHook(new Thread(browser::close));
        }
        return browser;
    }

    @Override
    public void afterAll(ExtensionContext context) {
        if (browser != null) {
            browser.asNew();
        }
    }
}
