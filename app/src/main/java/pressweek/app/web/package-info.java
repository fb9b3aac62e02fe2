/** The pages: a server on this machine or the plant's network, its routes, and who may use them. */
@NullMarked
package pressweek.app.web;

import org.jspecify.annotations.NullMarked;
