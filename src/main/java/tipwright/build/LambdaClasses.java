// SPDX-License-Identifier: Apache-2.0
package tipwright.build;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * For the build: copies a folder of classes with each lambda and method reference made into a small class of its own, as an
 * inner class would be. Java makes such a class itself the first time that it comes by, even when the archive of classes has it
 * ready; that takes some 0.1 ms each, and a check comes by some 500.
 */
public final class LambdaClasses {
    private final Map<String, ClassNode> classes = new TreeMap<>();
    private final List<ClassNode> made = new ArrayList<>();

    private LambdaClasses() {}

    /**
     * Copies the folder.
     *
     * @param args the folder of the classes, and the one to write, which is emptied first
     */
    public static void main(String[] args) throws IOException {
        copy(Path.of(args[0]), Path.of(args[1]));
    }

    /** Copies the folder {@code from} into {@code to}, which is emptied first; what is not a class is copied as it is. */
    static void copy(Path from, Path to) throws IOException {
        LambdaClasses lambdas = new LambdaClasses();
        for (Path old : files(to)) {
            Files.delete(old);
        }
        for (Path file : files(from)) {
            if (file.toString().endsWith(".class")) {
                ClassNode read = new ClassNode();
                new ClassReader(Files.readAllBytes(file)).accept(read, 0);
                lambdas.classes.put(read.name, read);
            } else {
                Path copy = to.resolve(from.relativize(file).toString());
                Files.createDirectories(copy.getParent());
                Files.copy(file, copy);
            }
        }
        for (ClassNode owner : lambdas.classes.values()) {
            lambdas.replace(owner);
        }
        for (ClassNode written : lambdas.all()) {
            ClassWriter bytes = new ClassWriter(ClassWriter.COMPUTE_MAXS);
            written.accept(bytes);
            Path file = to.resolve(written.name + ".class");
            Files.createDirectories(file.getParent());
            Files.write(file, bytes.toByteArray());
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private List<ClassNode> all() {
        List<ClassNode> all = new ArrayList<>(classes.values());
        all.addAll(made);
        return all;
    }

    private void replace(ClassNode owner) {
        int number = 0;
        for (MethodNode method : owner.methods) {
            for (AbstractInsnNode step : method.instructions.toArray()) {
                if (step instanceof InvokeDynamicInsnNode asked && LambdaClass.isLambda(asked)) {
                    ClassNode one = LambdaClass.of(owner.name + "$lambda$" + number, asked);
                    number++;
                    made.add(one);
                    join(owner, one);
                    method.instructions.set(
                            step,
                            new MethodInsnNode(Opcodes.INVOKESTATIC, one.name, LambdaClass.MAKE, asked.desc, false));
                }
            }
        }
    }

    /** What is private to the owner, or to a class that it stands in, is open to the new class too. */
    private void join(ClassNode owner, ClassNode one) {
        ClassNode host = owner.nestHostClass == null ? owner : classes.get(owner.nestHostClass);
        if (host == null) {
            throw new IllegalStateException(
                    owner.name + " stands in " + owner.nestHostClass + ", which is not among the classes");
        }
        one.nestHostClass = host.name;
        if (host.nestMembers == null) {
            host.nestMembers = new ArrayList<>();
        }
        host.nestMembers.add(one.name);
    }
}
