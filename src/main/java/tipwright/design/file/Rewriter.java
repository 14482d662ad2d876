// SPDX-License-Identifier: Apache-2.0
package tipwright.design.file;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Changes the text of a file in one place and leaves every other character as it is, comments too. What comes out is read again and
 * has to hold what it should; otherwise there is an IllegalArgumentException. New values are given as YAML on one line.
 */
final class Rewriter {
    private final String text;
    private final Node root;
    private final String lineBreak;

    Rewriter(String text) {
        Node read = YamlText.read("", text, new Problems());
        if (read == null) {
            throw new IllegalArgumentException("the file cannot be read; fix its text first");
        }
        this.text = text;
        root = read;
        lineBreak = text.contains("\r\n") ? "\r\n" : "\n";
    }

    Node root() {
        return root;
    }

    /** A value with what stands before it on its own. */
    private record Span(int start, int end) {}

    /** The text with another value. */
    String replaced(Node old, String yaml) {
        String head = text.substring(0, old.place().start());
        String above = head.stripTrailing();
        boolean block = !(old instanceof Node.Scalar) && !isFlow(old) && above.endsWith(":");
        head = block ? above : head;
        String gap = head.endsWith(":") || head.endsWith("-") ? " " : "";
        return checked(head + gap + yaml + text.substring(end(old)), old, Plain.ofYaml(yaml));
    }

    /**
     * The text with one more key.
     *
     * @param after key that it goes behind; null: the last
     */
    String withKey(Node.Fields group, String key, String yaml, @Nullable String after) {
        Map<String, Object> wanted = new LinkedHashMap<>(Plain.of(group));
        wanted.put(key, Plain.ofYaml(yaml));
        String pair = Plain.scalar(key) + ": " + yaml;
        Node.Field before = after == null ? null : group.fields().get(after);
        for (Node.Field last : group.fields().values()) {
            before = after == null || before == null ? last : before;
        }
        if (before == null) {
            return checked(inserted(group.place().start() + 1, pair), group, wanted);
        }
        if (isFlow(group)) {
            return checked(inserted(end(before), ", " + pair), group, wanted);
        }
        int column = column(group.fields().values().iterator().next().key().start());
        return checked(inserted(lineEnd(end(before)), lineBreak + " ".repeat(column) + pair), group, wanted);
    }

    /** The text without a key and its value; a remark behind it on its line goes too. */
    String withoutKey(Node.Fields group, String key) {
        Map<String, Object> wanted = new LinkedHashMap<>(Plain.of(group));
        if (wanted.remove(key) == null) {
            throw new IllegalArgumentException("no key '" + key + "' there");
        }
        List<Span> spans = new ArrayList<>();
        int at = -1;
        for (Map.Entry<String, Node.Field> e : group.fields().entrySet()) {
            at = e.getKey().equals(key) ? spans.size() : at;
            spans.add(new Span(e.getValue().key().start(), end(e.getValue())));
        }
        return checked(without(group, spans, at, "{}"), group, wanted);
    }

    /**
     * The text with one more entry in a list.
     *
     * @param after index of the entry that it comes behind; -1: before all
     */
    String withItem(Node.Items list, String yaml, int after) {
        List<Object> wanted = new ArrayList<>(Plain.of(list));
        wanted.add(after + 1, Plain.ofYaml(yaml));
        List<Node> items = list.items();
        if (items.isEmpty()) {
            return checked(inserted(list.place().start() + 1, yaml), list, wanted);
        }
        if (isFlow(list)) {
            int at = after < 0 ? items.get(0).place().start() : end(items.get(after));
            return checked(inserted(at, after < 0 ? yaml + ", " : ", " + yaml), list, wanted);
        }
        int dash = dash(items.get(0));
        String entry = "- " + yaml;
        String gap = lineBreak + " ".repeat(column(dash));
        return after < 0
                ? checked(inserted(dash, entry + gap), list, wanted)
                : checked(inserted(lineEnd(end(items.get(after))), gap + entry), list, wanted);
    }

    /** The text with an entry of a list once more behind it, written as that is. */
    String withCopy(Node.Items list, int index) {
        Node item = list.items().get(index);
        List<Object> wanted = new ArrayList<>(Plain.of(list));
        wanted.add(index + 1, Plain.any(item));
        int end = end(item);
        String written = text.substring(item.place().start(), end);
        if (isFlow(list)) {
            return checked(inserted(end, ", " + written), list, wanted);
        }
        String gap = lineBreak + " ".repeat(column(dash(item)));
        return checked(inserted(lineEnd(end), gap + "- " + written), list, wanted);
    }

    /** The text with a single value that stands for a list of one made into that list. */
    String asList(Node single) {
        int start = single.place().start();
        int end = end(single);
        String written = text.substring(start, end);
        boolean flow = isFlow(single) || single instanceof Node.Scalar;
        String listed = flow ? "[" + written + "]" : "- " + written.replace("\n", "\n  ");
        return checked(text.substring(0, start) + listed + text.substring(end), single, List.of(Plain.any(single)));
    }

    /** The text without a list's entry. */
    String withoutItem(Node.Items list, int index) {
        List<Object> wanted = new ArrayList<>(Plain.of(list));
        wanted.remove(index);
        List<Span> spans = new ArrayList<>();
        for (Node item : list.items()) {
            spans.add(new Span(isFlow(list) ? item.place().start() : dash(item), end(item)));
        }
        return checked(without(list, spans, index, "[]"), list, wanted);
    }

    /** The text with another name for a key. */
    String renamed(Node.Fields group, String key, String name) {
        Map<String, Object> wanted = new LinkedHashMap<>();
        group.fields().forEach((k, field) -> wanted.put(k.equals(key) ? name : k, Plain.any(field.value())));
        Node.Field field = group.fields().get(key);
        if (field == null || wanted.size() != group.fields().size()) {
            throw new IllegalArgumentException("'" + key + "' cannot be called '" + name + "'");
        }
        String edited = text.substring(0, field.key().start())
                + Plain.scalar(name)
                + text.substring(field.key().end());
        return checked(edited, group, wanted);
    }

    private String without(Node whole, List<Span> spans, int at, String empty) {
        Span gone = spans.get(at);
        boolean last = at == spans.size() - 1;
        if (spans.size() == 1) {
            boolean flow = isFlow(whole);
            return cut(
                    flow ? whole.place().start() : gone.start,
                    flow ? whole.place().end() : gone.end,
                    empty);
        }
        if (isFlow(whole)) {
            int from = last ? spans.get(at - 1).end : gone.start;
            int to = last ? gone.end : spans.get(at + 1).start;
            boolean remark = last && text.substring(from, gone.start).indexOf('#') >= 0;
            return cut(remark ? gone.start : from, to, "");
        }
        int lineStart = text.lastIndexOf('\n', gone.start - 1) + 1;
        if (!text.substring(lineStart, gone.start).isBlank()) {
            int next = last ? gone.end : spans.get(at + 1).start;
            boolean remark = text.substring(gone.end, next).indexOf('#') >= 0;
            return cut(gone.start, remark ? gone.end : next, "");
        }
        int end = lineEnd(gone.end);
        int after = text.startsWith("\r\n", end) ? end + 2 : Math.min(end + 1, text.length());
        return end == text.length()
                ? cut(lineStart == 0 ? 0 : lineStart - lineBreak.length(), end, "")
                : cut(lineStart, after, "");
    }

    private String cut(int from, int to, String instead) {
        return text.substring(0, from) + instead + text.substring(to);
    }

    private String inserted(int at, String piece) {
        return cut(at, at, piece);
    }

    private String checked(String edited, Node target, Object wanted) {
        Node now = YamlText.read("", edited, new Problems());
        if (now == null || !Plain.any(now).equals(Plain.with(root, target, wanted))) {
            throw new IllegalArgumentException(
                    "this cannot be written in line " + target.place().line() + " as the file is laid out there");
        }
        return edited;
    }

    private boolean isFlow(Node node) {
        char first = text.charAt(node.place().start());
        return node instanceof Node.Fields ? first == '{' : first == '[';
    }

    private int end(Node.Field field) {
        return Math.max(field.key().end(), end(field.value()));
    }

    /** After the last character of a value, without the remarks behind it. */
    private int end(Node node) {
        if (node instanceof Node.Fields group && !isFlow(node)) {
            return group.fields().values().stream()
                    .mapToInt(this::end)
                    .max()
                    .orElse(node.place().end());
        }
        if (node instanceof Node.Items list && !isFlow(node)) {
            return list.items().stream()
                    .mapToInt(this::end)
                    .max()
                    .orElse(node.place().end());
        }
        int end = node.place().end();
        while (end > node.place().start() && Character.isWhitespace(text.charAt(end - 1))) {
            end--;
        }
        return end;
    }

    private int lineEnd(int at) {
        int end = text.indexOf('\n', at);
        end = end < 0 ? text.length() : end;
        return end > at && text.charAt(end - 1) == '\r' ? end - 1 : end;
    }

    private int column(int at) {
        return at - (text.lastIndexOf('\n', at - 1) + 1);
    }

    private int dash(Node item) {
        return text.lastIndexOf('-', Math.max(0, item.place().start() - 1));
    }
}
