package loomwright.generator.preview;

import java.nio.charset.StandardCharsets;
import loomwright.markup.Html;

/** What the preview adds to a page on its way to the browser. The files of a site that is built never hold it. */
final class PreviewPage {
    static final String SCRIPT = "/.preview/reload.js";
    static final String OFFLINE = "/offline.js";
    static final String EVENTS = "/.preview/events";

    private static final String STRICT = "default-src 'none';";
    private static final String LISTENING = STRICT + " connect-src 'self';";

    /** The policy of the site for a page that has nothing but its script. */
    private static final String POLICY = LISTENING + " script-src 'self'; base-uri 'none'; form-action 'none'";
    private static final String TAG = "<script defer src=\"" + SCRIPT + "\"></script>\n";

    private PreviewPage() {}

    /** The script that waits for the next build and loads the page again. */
    static String script() {
        return "new EventSource('" + EVENTS + "').addEventListener('built', function () { location.reload(); });\n";
    }

    /** The page with that script, and a policy that lets it listen to this server. */
    static byte[] withReload(byte[] page) {
        String html = new String(page, StandardCharsets.UTF_8);
        String open = html.replace(STRICT, LISTENING);
        return open.replace("</head>", TAG + "</head>").getBytes(StandardCharsets.UTF_8);
    }

    /** The page shown in place of every other while there are problems. */
    static byte[] ofProblems(String problems) {
        String html = "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                + "<meta http-equiv=\"Content-Security-Policy\" content=\"" + POLICY + "\">\n<title>To mend</title>\n" + TAG
                + "</head>\n<body>\n<main>\n<h1>To mend</h1>\n<p>Save the file, and this page shows the site again.</p>\n<pre>"
                + Html.escape(problems) + "</pre>\n</main>\n</body>\n</html>\n";
        return html.getBytes(StandardCharsets.UTF_8);
    }
}
