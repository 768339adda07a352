@org.jspecify.annotations.NullMarked
package org.fallrule.terrain.flow;
