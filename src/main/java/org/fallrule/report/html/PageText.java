package org.fallrule.report.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.List;
import java.util.stream.Collectors;
import org.fallrule.report.map.MapStyle;
import org.fallrule.report.profile.SectionStyle;

/**
 * The page's style and script, and the policy that lets the browser run these two and load nothing at all.
 *
 * @param style the style sheet
 * @param script the script
 */
public record PageText(String style, String script) {
    private static final List<String> SCRIPTS = List.of("plan.js", "filter.js", "light.js", "report.js", "watched.js");

    static PageText load() {
        return new PageText(MapStyle.css() + SectionStyle.css() + resource("report.css"), script(SCRIPTS));
    }

    /** Those of the page over many sites. */
    static PageText ofDocket() {
        return new PageText(resource("report.css") + resource("docket.css"), script(List.of("docket.js")));
    }

    /** A page that has no script: nothing on it moves. */
    static PageText still() {
        return new PageText(MapStyle.css() + resource("report.css") + resource("comparison.css"), "");
    }

    private static String script(List<String> names) {
        return names.stream()
                .map(PageText::resource)
                .collect(Collectors.joining("", "(function () {\n\"use strict\";\n", "})();\n"));
    }

    /** The Content-Security-Policy: the digests of the style and the script as they stand on the page. */
    public String policy() {
        String scripts = script.isEmpty() ? "" : "; script-src '" + digest(script) + "'";
        return "default-src 'none'; style-src '" + digest(style) + "'" + scripts
                + "; base-uri 'none'; form-action 'none'";
    }

    private static String digest(String text) {
        try {
            byte[] sum = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(sum);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static String resource(String name) {
        try (InputStream in = PageText.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " is not beside " + PageText.class.getName());
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8).replace("\r", "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
