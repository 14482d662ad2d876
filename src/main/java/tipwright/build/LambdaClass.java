// SPDX-License-Identifier: Apache-2.0
package tipwright.build;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.commons.GeneratorAdapter;
import org.objectweb.asm.commons.Method;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.MethodNode;

/**
 * One lambda or method reference as a class: what it takes along is kept in fields, its one method calls what it stands for.
 * Source: java.lang.invoke.LambdaMetafactory, whose documentation tells what the class must do.
 */
final class LambdaClass {
    /** The method that makes one, of what it takes along. */
    static final String MAKE = "make";

    private static final String ONLY = "ONLY";
    private static final String START = "<init>";

    private final ClassNode made = new ClassNode();
    private final Type self;
    private final Type shown;
    private final Type[] taken;
    private final InvokeDynamicInsnNode asked;

    private LambdaClass(String name, InvokeDynamicInsnNode asked) {
        this.asked = asked;
        self = Type.getObjectType(name);
        shown = Type.getReturnType(asked.desc);
        taken = Type.getArgumentTypes(asked.desc);
        made.visit(
                Opcodes.V17,
                Opcodes.ACC_FINAL | Opcodes.ACC_SUPER | Opcodes.ACC_SYNTHETIC,
                name,
                null,
                "java/lang/Object",
                new String[] {shown.getInternalName()});
    }

    /** Whether this asks for a lambda of the usual kind; one that can be written to a file, or that is of two kinds, is not. */
    static boolean isLambda(InvokeDynamicInsnNode asked) {
        return asked.bsm.getOwner().equals("java/lang/invoke/LambdaMetafactory")
                && asked.bsm.getName().equals("metafactory");
    }

    /** The class of this name for what is asked. */
    static ClassNode of(String name, InvokeDynamicInsnNode asked) {
        LambdaClass one = new LambdaClass(name, asked);
        one.start();
        if (one.taken.length == 0) {
            one.onlyOne();
        }
        one.make();
        one.call((Type) asked.bsmArgs[0], (Handle) asked.bsmArgs[1], (Type) asked.bsmArgs[2]);
        return one.made;
    }

    private GeneratorAdapter method(int access, String name, String description) {
        MethodNode body = new MethodNode(access, name, description, null, null);
        made.methods.add(body);
        GeneratorAdapter code = new GeneratorAdapter(body, access, name, description);
        code.visitCode();
        return code;
    }

    private static String field(int number) {
        return "taken" + number;
    }

    private Method constructor() {
        return new Method(START, Type.VOID_TYPE, taken);
    }

    private void start() {
        GeneratorAdapter code = method(Opcodes.ACC_PRIVATE, START, constructor().getDescriptor());
        code.loadThis();
        code.invokeConstructor(Type.getType(Object.class), Method.getMethod("void <init> ()"));
        for (int i = 0; i < taken.length; i++) {
            made.visitField(Opcodes.ACC_PRIVATE | Opcodes.ACC_FINAL, field(i), taken[i].getDescriptor(), null, null);
            code.loadThis();
            code.loadArg(i);
            code.putField(self, field(i), taken[i]);
        }
        code.returnValue();
        code.endMethod();
    }

    /** What takes nothing along is made once. */
    private void onlyOne() {
        made.visitField(
                Opcodes.ACC_PRIVATE | Opcodes.ACC_STATIC | Opcodes.ACC_FINAL, ONLY, self.getDescriptor(), null, null);
        GeneratorAdapter code = method(Opcodes.ACC_STATIC, "<clinit>", "()V");
        code.newInstance(self);
        code.dup();
        code.invokeConstructor(self, constructor());
        code.putStatic(self, ONLY, self);
        code.returnValue();
        code.endMethod();
    }

    private void make() {
        GeneratorAdapter code = method(Opcodes.ACC_STATIC, MAKE, asked.desc);
        if (taken.length == 0) {
            code.getStatic(self, ONLY, self);
        } else {
            code.newInstance(self);
            code.dup();
            code.loadArgs();
            code.invokeConstructor(self, constructor());
        }
        code.returnValue();
        code.endMethod();
    }

    /** The one method: what is called is a method of no kind, one of an object, or a constructor. */
    private void call(Type raw, Handle called, Type exact) {
        Type owner = Type.getObjectType(called.getOwner());
        boolean isConstructor = called.getTag() == Opcodes.H_NEWINVOKESPECIAL;
        GeneratorAdapter code = method(Opcodes.ACC_PUBLIC, asked.name, raw.getDescriptor());
        if (isConstructor) {
            code.newInstance(owner);
            code.dup();
        }
        List<Type> wanted = new ArrayList<>();
        if (!isConstructor && called.getTag() != Opcodes.H_INVOKESTATIC) {
            wanted.add(owner);
        }
        wanted.addAll(Arrays.asList(Type.getArgumentTypes(called.getDesc())));
        for (int i = 0; i < taken.length; i++) {
            code.loadThis();
            code.getField(self, field(i), taken[i]);
            turn(code, taken[i], wanted.get(i));
        }
        for (int i = 0; i < raw.getArgumentTypes().length; i++) {
            code.loadArg(i);
            turn(code, raw.getArgumentTypes()[i], exact.getArgumentTypes()[i]);
            turn(code, exact.getArgumentTypes()[i], wanted.get(taken.length + i));
        }
        code.visitMethodInsn(step(called), called.getOwner(), called.getName(), called.getDesc(), called.isInterface());
        back(
                code,
                isConstructor ? owner : Type.getReturnType(called.getDesc()),
                exact.getReturnType(),
                raw.getReturnType());
        code.endMethod();
    }

    private static int step(Handle called) {
        return switch (called.getTag()) {
            case Opcodes.H_INVOKESTATIC -> Opcodes.INVOKESTATIC;
            case Opcodes.H_NEWINVOKESPECIAL -> Opcodes.INVOKESPECIAL;
            default -> called.isInterface() ? Opcodes.INVOKEINTERFACE : Opcodes.INVOKEVIRTUAL;
        };
    }

    private static void back(GeneratorAdapter code, Type given, Type exact, Type raw) {
        if (!raw.equals(Type.VOID_TYPE)) {
            turn(code, given, exact);
            turn(code, exact, raw);
        } else if (given.getSize() == 2) {
            code.pop2();
        } else if (given.getSize() == 1) {
            code.pop();
        }
        code.returnValue();
    }

    private static void turn(GeneratorAdapter code, Type from, Type to) {
        if (from.equals(to)) {
            return;
        }
        if (isPrimitive(from) && isPrimitive(to)) {
            code.cast(from, to);
        } else if (isPrimitive(from)) {
            code.valueOf(from);
        } else if (isPrimitive(to)) {
            code.unbox(to);
        } else {
            code.checkCast(to);
        }
    }

    private static boolean isPrimitive(Type type) {
        return type.getSort() < Type.ARRAY;
    }
}
