/** What an element is made of and what it does, with the evidence for it. */
package org.coatrun.ifcimport.recognise;
