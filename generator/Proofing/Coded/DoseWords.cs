using System.Text.RegularExpressions;

namespace CareSheets.Proofing.Coded;

/// <summary>Words by which a sentence tells a dose, in groups of one meaning each.</summary>
internal static partial class DoseWords
{
    private const RegexOptions Plain = RegexOptions.IgnoreCase | RegexOptions.NonBacktracking;

    private const string Number =
        @"(\d[\d.,]*|[½¼¾]|one|two|three|four|five|six|seven|eight|nine|ten|twenty|half|quarter|an?|every|some|few)";

    private const string Spoon = "teaspoons?|tablespoons?|teaspoonfuls?|tablespoonfuls?|spoons?|spoonfuls?|tsp|tbsp";

    /// <summary>Grams in each litre are how salty brackish water is, and no dose.</summary>
    public static bool IsOfWater(string amount) => GramsOrParts().IsMatch(amount);

    [GeneratedRegex(@"[^.!?;]+(?:\.\d[^.!?;]*)*", RegexOptions.NonBacktracking)]
    public static partial Regex Sentence();

    [GeneratedRegex(
        @"\b" + Number + @"[\s ]*([-–][\s ]*\d[\d.,]*[\s ]*)?" +
        @"((mg|g|ml|mls|cc|ppm|ppt|millilitres?|milliliters?|grams?|grammes?|milligrams?|drops?|capsules?|tablets?|" +
        @"pills?|pinch|pinches|capfuls?|sachets?|scoops?|cups?|per[\s ]*cent|percent|parts|handfuls? of salt|" + Spoon +
        @")\b|[%‰])", Plain)]
    public static partial Regex Amount();

    [GeneratedRegex(
        @"\b(treat(s|ed|ing|ment|ments)?|doses?|dosed|dosing|medicines?|medicat(e|ed|ion|ions)|cures?|cured|" +
        @"dewormers?|wormers?|worming|antibiotics?|parasites?|remedy|remedies|praziquantel|levamisole|" +
        @"flubendazole|fenbendazole|metronidazole|ivermectin|emamectin|malachite|methylene|formalin|formaldehyde|" +
        @"copper|permanganate|peroxide|acriflavine?|kanamycin|nitrofurazone|erythromycin|\w+cycline|amoxicillin|" +
        @"penicillin|enrofloxacin|trimethoprim|sulfa\w*|sulpha\w*|quinine|chloroquine|trichlorfon|diflubenzuron|" +
        @"toltrazuril|clove oil|eugenol|iodine|epsom|(salt|salted) (baths?|dips?)|white spot|velvet|fungus|ich)\b",
        Plain)]
    public static partial Regex Treatment();

    [GeneratedRegex(@"\bsalt(s|ed|ing)?\b", Plain)]
    public static partial Regex Salt();

    [GeneratedRegex(@"\b(marine|sea|seawater|brackish|salinity|hydrometer)\b", Plain)]
    public static partial Regex Sea();

    [GeneratedRegex(@"(\bg|grams?|grammes?|ppt|‰|%)$", Plain)]
    private static partial Regex GramsOrParts();

    [GeneratedRegex(
        @"\b(half|double|twice|triple|quarter|third|thirds|full|whole|one|two|three)[\s ]+" +
        @"((a|an|of|the|its|that|this|usual|normal|ordinary|printed|recommended|stated|adult|strength)[\s ]+){0,4}" +
        @"(doses?|dosage)\b|\b(half|double|twice|triple) what the (bottle|label|maker|packet) says\b|" +
        @"\bhalf[- ]doses?\b|\bdouble[- ]doses?\b", Plain)]
    public static partial Regex PartOfADose();

    [GeneratedRegex(@"\b(kills?|killed|harms?|deadly|fatal|lethal|dies?|dangerous|too much|too strong)\b", Plain)]
    public static partial Regex Harm();

    [GeneratedRegex(
        @"\b(rais(e|es|ed|ing)|increas(e|es|ed|ing)|warm(ing)? (it|the)|heat(ing|ed)?|turn(ed|ing)?|" +
        @"days?|weeks?)\b", Plain)]
    public static partial Regex Warming();

    [GeneratedRegex(
        @"\b(cures?|cured|treats?|treatment|against|clears?|kills?|drives?|rids?|sweats?|remedy)\b[^.!?;]*|" +
        @"\b(white spot|ich|velvet|parasites?|disease|fungus)\b[^.!?;]*\b(days?|hours?|weeks?)\b", Plain)]
    public static partial Regex Cure();

    [GeneratedRegex(@"\b\d[\d.,]*[\s ]*(([-–]|to)[\s ]*\d[\d.,]*[\s ]*)?(°|º|degrees?\b)[\s ]*[CF]?", Plain)]
    public static partial Regex Warmth();
}
