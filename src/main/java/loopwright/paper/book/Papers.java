package loopwright.paper.book;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import loopwright.answer.Inspection;
import loopwright.paper.Origin;
import loopwright.rank.RankResult.Ranked;

/** Every paper of a build by its file's name: the book and what belongs to it. The same build gives the same bytes. */
public final class Papers {

    private final SortedMap<String, byte[]> files = new TreeMap<>();
    private final SortedMap<String, String> titles = new TreeMap<>();

    /** The papers of a build, beside all that no other beats. */
    public Papers(Inspection inspection, List<Ranked> unbeaten, Origin origin) {
        add("book.html", "The book: drawings, lists, checks, quote", new Book(inspection, unbeaten, origin).html());
        index(inspection, origin);
    }

    private void index(Inspection inspection, Origin origin) {
        Html html = new Html();
        html.text("Build " + inspection.build().key() + ". From " + origin.line() + ".");
        StringBuilder links = new StringBuilder("<ul>\n");
        for (Map.Entry<String, String> each : titles.entrySet()) {
            links.append("<li><a href=\"")
                    .append(each.getKey())
                    .append("\">")
                    .append(each.getKey())
                    .append("</a>: ")
                    .append(Html.escaped(each.getValue()))
                    .append("</li>\n");
        }
        links.append("</ul>\n");
        String title = inspection.fitCase().brief().title();
        add(
                "index.html",
                "This list",
                Html.page(title, "<h1>" + Html.escaped(title) + "</h1>\n" + html.body() + links));
    }

    private void add(String name, String title, String text) {
        titles.put(name, title);
        files.put(name, text.getBytes(StandardCharsets.UTF_8));
    }

    /** The files. */
    public SortedMap<String, byte[]> all() {
        return java.util.Collections.unmodifiableSortedMap(files);
    }
}
