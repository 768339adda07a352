package org.fallrule.method;

import java.util.Comparator;
import java.util.List;
import java.util.ServiceLoader;

/** The methods of one package. Annotate an implementation with {@code @AutoService(MethodList.class)}. */
public interface MethodList {

    List<Method> methods();

    /** Every method that there is, by name. */
    static List<Method> all() {
        return ServiceLoader.load(MethodList.class).stream()
                .flatMap(list -> list.get().methods().stream())
                .sorted(Comparator.comparing(Method::name))
                .toList();
    }
}
