/** How long the packaged program takes on models of growing size, beside another reader. */
package org.coatrun.cli.bench;
