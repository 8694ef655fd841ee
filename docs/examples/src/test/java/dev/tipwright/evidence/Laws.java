package dev.tipwright.evidence;

/** Where a law of each headline function is stated: a test class with properties, tried with made-up inputs. */
final class Laws {

    private Laws() {}

    /** The file, from the top of the project. */
    static String of(Headline headline) {
        return switch (headline) {
            case PROFILE_VOLUME -> core("mass/ProfileVolumeProperties");
            case TIP_TRIM -> core("trim/TipTrimProperties");
            case CUT_MARKS -> core("cut/CutSheetTest");
            case PLAYING_LENGTH -> core("length/CutToLengthProperties");
            case SIXTY_DEGREE_LENGTH -> core("length/SixtyDegreePlaneProperties");
            case SHAFT_MASS -> core("mass/ShaftCutProperties");
            case FREQUENCY, TRIM_FOR_FREQUENCY -> core("flex/FrequencyLawsTest");
            case RULES_CHECK -> core("rules/RulesLawProperties");
            case BUDGET -> core("uncertainty/BudgetProperties");
            case MONTE_CARLO -> core("uncertainty/MonteCarloLawProperties");
            case FIRST_CONTACT -> fit("insert/FirstContactLawProperties");
            case CLEARANCE -> fit("insert/ClearanceTest");
            case LEAN, CLASS_OF_FIT -> fit("limits/LooseFitLawProperties");
            case MATERIAL_REMOVAL -> fit("taper/MaterialRemovalLawProperties");
            case STAGE_TABLE -> fit("taper/StageTableTest");
            case STOP_READING -> fit("taper/StopReadingTest");
            case SHIM, BORE_OPENING -> fit("other/OtherWaysLawProperties");
            case BOND -> fit("bond/BondLawProperties");
            case SELECTIVE_ASSEMBLY -> fit("set/SetLawProperties");
            case RESCUE -> fit("set/RescueLawProperties");
            case BALANCE, INERTIA -> swing("balance/BalanceProperties");
            case SWING_WEIGHT -> swing("scale/SwingWeightScaleProperties");
            case TARGET_SOLVE, WEIGHTS_FROM_STOCK -> swing("aim/AimLawProperties");
            case SHAFT_MATCHING -> core("match/ShaftMatcherLawProperties");
            case SCALE_READING -> swing("learn/LearnLawProperties");
        };
    }

    /** The name of the class. */
    static String name(Headline headline) {
        String file = of(headline);
        return file.substring(file.lastIndexOf('/') + 1, file.length() - ".java".length());
    }

    private static String core(String test) {
        return "core/src/test/java/dev/tipwright/core/" + test + ".java";
    }

    private static String fit(String test) {
        return "fit-check/src/test/java/dev/tipwright/fitcheck/" + test + ".java";
    }

    private static String swing(String test) {
        return "swingweight/src/test/java/dev/tipwright/swingweight/" + test + ".java";
    }
}
