package lanewright.planner.document;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Writes what an edit changed into the owner's own document and leaves the rest as it stands: what
 * was not said stays unsaid, and keeps being an assumption.
 */
final class Edit {

    private Edit() {}

    /**
     * The owner's object after an edit.
     *
     * @param owner as it stands
     * @param before the whole of it written out, before the edit
     * @param after the whole of it written out, after the edit
     */
    static Node.Members members(Node.Members owner, Node.Members before, Node.Members after) {
        Map<String, Node> said = new LinkedHashMap<>(owner.values());
        Map<String, Node> why = new LinkedHashMap<>();
        if (said.get("why") instanceof Node.Members reasons) {
            why.putAll(reasons.values());
        }
        for (String name : before.values().keySet()) {
            if (!after.values().containsKey(name)) {
                said.remove(name);
                why.remove(name);
            }
        }
        for (Map.Entry<String, Node> now : after.values().entrySet()) {
            String name = now.getKey();
            Node was = before.values().get(name);
            if (!now.getValue().equals(was)) {
                said.put(name, changed(said.get(name), was, now.getValue()));
                why.remove(name);
            }
        }
        if (why.isEmpty()) {
            said.remove("why");
        } else {
            said.put("why", new Node.Members(Node.At.NOWHERE, why));
        }
        return new Node.Members(owner.at(), said);
    }

    private static Node changed(@Nullable Node owner, @Nullable Node before, Node after) {
        if (before instanceof Node.Members was && after instanceof Node.Members now) {
            Node.Members said =
                    owner instanceof Node.Members given
                            ? given
                            : new Node.Members(Node.At.NOWHERE, Map.of());
            return members(said, was, now);
        }
        if (owner instanceof Node.Items given
                && before instanceof Node.Items was
                && after instanceof Node.Items now) {
            return items(given.values(), was.values(), now.values());
        }
        return after;
    }

    /** Lists of one length are edited one by one; of others, what is equal at both ends stays. */
    private static Node items(List<Node> owner, List<Node> before, List<Node> after) {
        if (owner.size() != before.size()) {
            return new Node.Items(Node.At.NOWHERE, after);
        }
        int most = Math.min(before.size(), after.size());
        int head = 0;
        while (head < most && before.get(head).equals(after.get(head))) {
            head++;
        }
        int tail = 0;
        while (tail < most - head
                && before.get(before.size() - 1 - tail)
                        .equals(after.get(after.size() - 1 - tail))) {
            tail++;
        }
        boolean sameLength = before.size() == after.size();
        List<Node> edited = new ArrayList<>(owner.subList(0, head));
        for (int i = head; i < after.size() - tail; i++) {
            edited.add(
                    sameLength ? changed(owner.get(i), before.get(i), after.get(i)) : after.get(i));
        }
        edited.addAll(owner.subList(owner.size() - tail, owner.size()));
        return new Node.Items(Node.At.NOWHERE, edited);
    }
}
