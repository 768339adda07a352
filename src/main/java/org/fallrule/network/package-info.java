/** The drain as a directed graph of pipes between structures, each pipe turned so that it runs the way the water should. */
@NullMarked
package org.fallrule.network;

import org.jspecify.annotations.NullMarked;
