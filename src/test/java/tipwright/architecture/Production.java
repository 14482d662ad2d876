// SPDX-License-Identifier: Apache-2.0
package tipwright.architecture;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;

/** The program's own classes, without tests. */
final class Production {
    private Production() {}

    static JavaClasses classes() {
        return new ClassFileImporter()
                .withImportOption(new ImportOption.DoNotIncludeTests())
                .withImportOption(location -> !location.contains("/test-classes/"))
                .importPackages("tipwright");
    }
}
