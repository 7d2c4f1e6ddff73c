package railtrim.report;

import freemarker.core.TemplateClassResolver;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Locale;
import java.util.Map;
import railtrim.job.BuiltIn;
import railtrim.procedure.Words;

/**
 * The checklist as one web page that needs nothing else: no script, no link, no picture from outside. The template escapes every text it puts in;
 * the page's own policy allows its one style sheet, by its hash, and nothing more.
 */
final class HtmlReport {
    private HtmlReport() {}

    static String write(Checklist checklist, Words words) {
        String style = BuiltIn.text("report/checklist.css");
        StringWriter page = new StringWriter();
        try {
            template()
                    .process(
                            Map.of(
                                    "list",
                                    checklist,
                                    "words",
                                    said(checklist, words),
                                    "style",
                                    style,
                                    "styleHash",
                                    sha256(style)),
                            page);
        } catch (TemplateException e) {
            throw new IllegalStateException(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return page.toString();
    }

    private static Map<String, String> said(Checklist checklist, Words words) {
        return Map.of(
                "missing", words.of("report.missing"),
                "note", checklist.ofAJob() ? words.of("report.note") : "",
                "contents", words.of("report.contents"));
    }

    private static Template template() throws IOException {
        Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
        configuration.setDefaultEncoding(StandardCharsets.UTF_8.name());
        configuration.setLocale(Locale.ROOT);
        configuration.setNumberFormat("computer");
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        // The ending .ftlh switches HTML escaping on.
        return new Template("checklist.ftlh", BuiltIn.text("report/checklist.ftlh"), configuration);
    }

    private static String sha256(String text) {
        try {
            byte[] digest = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(digest);
        } catch (NoSuchAlgorithmException e) {
            // Every Java platform has it.
            throw new IllegalStateException(e);
        }
    }
}
