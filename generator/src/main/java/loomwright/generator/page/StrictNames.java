package loomwright.generator.page;

import com.github.mustachejava.MustacheException;
import com.github.mustachejava.reflect.MissingWrapper;
import com.github.mustachejava.reflect.ReflectionObjectHandler;
import com.github.mustachejava.util.Wrapper;
import java.util.List;

/** Refuses names that the page does not have. */
final class StrictNames extends ReflectionObjectHandler {
    static final String UNKNOWN = "no variable is called ";

    @Override
    public Wrapper find(String name, List<Object> scopes) {
        Wrapper wrapper = super.find(name, scopes);
        if (wrapper instanceof MissingWrapper) {
            Object page = scopes.get(0);
            throw new MustacheException(UNKNOWN + "\"" + name + "\" in " + page.getClass().getSimpleName());
        }
        return wrapper;
    }
}
