/**
 * Rain and what runs off: how hard it rains in a design storm, how long water takes to come, how much of it comes. Pure
 * functions, each with its published source as {@code METHOD}.
 */
@NullMarked
package org.fallrule.hydrology;

import org.jspecify.annotations.NullMarked;
