// SPDX-License-Identifier: Apache-2.0
package tipwright.geometry;

import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** Something that is made when it is first asked for, by one of the threads that ask; the others wait for it. */
public final class MadeOnce<T> implements Supplier<T> {
    private final Supplier<T> maker;
    private final ReentrantLock making = new ReentrantLock();
    private volatile @Nullable T made;

    /** By a pure function. */
    public MadeOnce(Supplier<T> maker) {
        this.maker = maker;
    }

    @Override
    public T get() {
        T known = made;
        return known == null ? make() : known;
    }

    private T make() {
        making.lock();
        try {
            T known = made;
            if (known == null) {
                known = maker.get();
                made = known;
            }
            return known;
        } finally {
            making.unlock();
        }
    }
}
