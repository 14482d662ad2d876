// SPDX-License-Identifier: Apache-2.0
package tipwright.design.key;

/** A name as a key or a part of an id, 'frame-pin', and as a person reads it, 'frame pin'. */
public final class NameId {
    private NameId() {}

    /** The id of a name. */
    public static String of(String name) {
        return name.replace(' ', '-');
    }

    /** The words of an id. */
    public static String words(String id) {
        return id.replace('-', ' ');
    }
}
