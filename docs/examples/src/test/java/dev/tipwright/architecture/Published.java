package dev.tipwright.architecture;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.core.importer.Location;

/** The classes of the three published modules, without tests and without what others wrote. */
final class Published {

    static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(new ImportOption.DoNotIncludeTests())
            .withImportOption(Published::published)
            .importPackages("dev.tipwright.core", "dev.tipwright.fitcheck", "dev.tipwright.swingweight");

    private Published() {}

    private static boolean published(Location location) {
        return !location.contains("/docs/");
    }
}
