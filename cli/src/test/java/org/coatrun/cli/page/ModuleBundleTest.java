package org.coatrun.cli.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class ModuleBundleTest {

  @Test
  void modulesBecomeConstantsThatPassOnTheirExports() {
    String script =
        new ModuleBundle()
            .add("a.js", "const x=1;function f(){}export{x as one,f};")
            .add("b.js", "export{one as uno}from\"./a.js\";import{f as g}from\"./a.js\";g();")
            .add(
                "c.js",
                "import * as B from \"b.js\";\nexport async function h() {}\nexport const k = B.uno;\n")
            .script();
    assertThat(script)
        .contains("return {one:x,f:f};")
        .contains("const {f:g}=module0;g();")
        .contains("return {uno:module0.one};")
        .contains("const B=module1;")
        .contains("async function h() {}")
        .contains("return {h,k};")
        .doesNotContain("import")
        .doesNotContain("export");
  }

  @Test
  void aFormNotKnownIsRefused() {
    assertThatThrownBy(() -> new ModuleBundle().add("d.js", "export default 3;"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("module d.js has a form not known: export default 3;");
  }

  @Test
  void aModuleMustStandBeforeItsImporter() {
    assertThatThrownBy(() -> new ModuleBundle().add("e.js", "import { z } from \"./later.js\";"))
        .hasMessageContaining("imports ./later.js, which is not there yet");
  }
}
