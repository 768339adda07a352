package org.fallrule.hydrology;

import com.google.auto.service.AutoService;
import java.util.List;
import org.fallrule.method.Method;
import org.fallrule.method.MethodList;

/** The methods of this package. */
@AutoService(MethodList.class)
public final class HydrologyMethods implements MethodList {

    @Override
    public List<Method> methods() {
        return List.of(Kirpich.METHOD);
    }
}
