package loomwright.site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.openqa.selenium.By;

/** Figures in the address of a calculator's page. */
@ExtendWith(WithBrowser.class)
class CarriedFiguresIT {
    private static final String PAGE = "calculators/voltage-drop.html";

    private Browser browser;
    private Form form;

    @BeforeEach
    void take(Browser shared) {
        browser = shared;
        form = new Form(browser, "voltage-drop");
    }

    @AfterEach
    void nothingWentWrong() {
        assertEquals(List.of(), browser.messages());
    }

    @Test
    void fillTheFields() {
        browser.open(PAGE + "#route-length=130%20in&current=6 A");
        assertEquals("6 A", form.value("current"));
        assertEquals("in", form.value("route-length-unit"));
        assertTrue(form.isThere("td.own"));
    }

    @Test
    void fillTheFieldsOfAnOpenPageToo() {
        browser.open(PAGE);
        browser.run("location.hash = '#current=7%20A'");
        browser.until(() -> form.value("current").equals("7 A"));
    }

    @Test
    void comeFromTheLinksOfAWorking() {
        browser.open("calculators/voltage-drop.html");
        String link = browser.driver().findElement(By.cssSelector("#voltage-drop .questions a")).getAttribute("href");
        String fragment = link.substring(link.indexOf('#') + 1);
        String page = link.substring(link.lastIndexOf("/calculators/") + 1, link.indexOf('#'));
        browser.open(page + "#" + fragment);
        assertTrue((boolean) browser.run("return document.querySelector('td.own') !== null || document.querySelector('.error') !== null"
                + " || document.querySelector('form.try') !== null"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "#current=%3Cimg%20src%3Dx%20onerror%3Dalert(1)%3E",
                "#current=\"><script>alert(1)</script>",
                "#conductor=nonsense",
                "#current=NaN&route-length=Infinity&size=-1",
                "#current=%F0%9F%98%80%00%zz%",
                "#current=999999999999999999999999999999999999999999",
                "#__proto__=1&constructor=2&toString=3"
            })
    void doNoHarmIfHostile(String fragment) {
        browser.open(PAGE + fragment);
        assertFalse((boolean) browser.run("return document.querySelector('main img, main script') !== null"));
        form.enter("current", "5 A");
        form.enter("route-length", "2 m");
        form.enter("size", "2.5 mm²");
        assertTrue(form.isThere("td.own"), "the page still works");
    }
}
