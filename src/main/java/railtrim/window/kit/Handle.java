package railtrim.window.kit;

import javafx.scene.Node;
import javafx.scene.Parent;

/**
 * What a node can be found by. Not its CSS id: the toolkit remembers which styles belong to nodes of one type, id and style classes, so that
 * each new id sends it once more through every rule of every style sheet, half of the time it took to show a step.
 */
public final class Handle {
    private static final String KEY = "railtrim.handle";

    private Handle() {}

    public static <N extends Node> N give(N node, String handle) {
        node.getProperties().put(KEY, handle);
        return node;
    }

    /** @return empty where it has none */
    public static String of(Node node) {
        return node.hasProperties() ? (String) node.getProperties().getOrDefault(KEY, "") : "";
    }

    /** @return null where no node within has it, the outermost and first one counts */
    public static Node find(Node within, String handle) {
        if (of(within).equals(handle)) {
            return within;
        }
        if (within instanceof Parent parent) {
            for (Node child : parent.getChildrenUnmodifiable()) {
                Node found = find(child, handle);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }
}
