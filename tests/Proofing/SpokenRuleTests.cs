using CareSheets.Diagnostics;
using CareSheets.Proofing;
using CareSheets.Rules;
using CareSheets.Species;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Proofing;

/// <summary>
/// Sentences as a writer might put them under an entry of the repository, with the rule of its own file that has to
/// speak; and sentences near them that say nothing wrong. All are made up.
/// </summary>
public sealed class SpokenRuleTests
{
    [Theory]
    [InlineData("hoplisoma-panda", "For a small tank a pair is plenty.", "words-and-group-agree")]
    [InlineData("hoplisoma-panda", "It can be kept alone.", "words-and-group-agree")]
    [InlineData("hoplisoma-panda", "In most houses no heater is needed.", "warm-water-needs-a-heater")]
    [InlineData("hoplisoma-panda", "It does well without a heater.", "warm-water-needs-a-heater")]
    [InlineData("danio-rerio", "A tank without a lid is fine.", "no-lid-is-left-off")]
    [InlineData("hoplisoma-panda", "Lay sharp gravel on the floor.", "gravel-is-not-laid-for-sifters")]
    [InlineData("pangio-kuhlii", "Coarse sand is dear; gravel will do.", "gravel-is-not-laid-for-sifters")]
    [InlineData("polypterus-delhezi", "It is perfectly safe with neons.", "hunters-are-not-called-safe")]
    [InlineData("danio-rerio", "In summer it can go into a pond.", "no-fish-is-sent-outdoors")]
    [InlineData("danio-rerio", "It is legal to keep everywhere.", "no-word-on-what-is-lawful")]
    [InlineData("danio-rerio", "No permit is needed for it.", "no-word-on-what-is-lawful")]
    [InlineData("danio-rerio", "It is safe for children to handle.", "nothing-is-called-safe-for-children")]
    [InlineData("danio-rerio", "It wants brackish water.", "salt-in-words-is-stated-in-figures")]
    [InlineData("danio-rerio", "Add marine salt as needed.", "salt-in-words-is-stated-in-figures")]
    [InlineData("hoplisoma-panda", "Its spines are harmless.", "hazard-is-not-denied")]
    [InlineData("hoplisoma-panda", "No doctor is needed when the spines prick.", "hazard-is-not-denied")]
    [InlineData("carinotetraodon-travancoricus", "Its flesh is perfectly edible.", "hazard-is-not-denied")]
    [InlineData("synodontis-eupterus", "That its spines are venomous is a tale.", "hazard-is-not-denied")]
    [InlineData("danio-rerio", "Treat worms with 5 mg of levamisole in each litre.", "no-dose-is-told")]
    [InlineData("danio-rerio", "Against white spot give two drops per litre.", "no-dose-is-told")]
    [InlineData("danio-rerio", "A teaspoon of salt cures fungus.", "no-dose-is-told")]
    [InlineData("danio-rerio", "Methylene blue at 3 ppm does the trick.", "no-dose-is-told")]
    [InlineData("danio-rerio", "Give a quarter of a tablet of metronidazole per 40 litres.", "no-dose-is-told")]
    [InlineData("danio-rerio", "Use half the dose of copper on the label.", "no-dose-is-told")]
    [InlineData("danio-rerio", "Let it have half the dose of copper.", "no-dose-is-told")]
    [InlineData("danio-rerio", "Add a tablespoon of salt per 20 litres.", "no-dose-is-told")]
    [InlineData("danio-rerio", "Salt at 0.3 % clears it.", "no-dose-is-told")]
    [InlineData("danio-rerio", "Raise the water to 32 °C for ten days to cure white spot.", "no-dose-is-told")]
    [InlineData("danio-rerio", "Twice the usual dose does it good.", "no-dose-is-told")]
    [InlineData("danio-rerio", "Two capfuls of salt in the bag keep it calm.", "no-dose-is-told")]
    [InlineData("danio-rerio", "Turn the heater up to 31 °C against velvet.", "no-dose-is-told")]
    [InlineData("danio-rerio", "Put 2–3 g of salt into each litre when it ails.", "no-dose-is-told")]
    [InlineData("danio-rerio", "You need no licence for it.", "no-word-on-what-is-lawful")]
    [InlineData("danio-rerio",
        "No permit is required, and it may be kept without papers.", "no-word-on-what-is-lawful")]
    [InlineData("danio-rerio", "It may be kept without a licence.", "no-word-on-what-is-lawful")]
    [InlineData("danio-rerio", "A licence is not needed.", "no-word-on-what-is-lawful")]
    [InlineData("danio-rerio", "It is not on any list of CITES.", "no-word-on-what-is-lawful")]
    [InlineData("danio-rerio", "It is unrestricted in the EU.", "no-word-on-what-is-lawful")]
    [InlineData("danio-rerio", "There is no law against keeping it.", "no-word-on-what-is-lawful")]
    [InlineData("danio-rerio", "It can be kept legally.", "no-word-on-what-is-lawful")]
    [InlineData("danio-rerio", "You do not need a permit.", "no-word-on-what-is-lawful")]
    [InlineData("danio-rerio", "If it is bred in a tank, no papers are needed.", "no-word-on-what-is-lawful")]
    [InlineData("danio-rerio", "It is not banned anywhere.", "no-word-on-what-is-lawful")]
    [InlineData("danio-rerio", "If it outgrows the tank, set it free in a pond.", "no-fish-is-sent-outdoors")]
    [InlineData("danio-rerio", "You can let it go in the river.", "no-fish-is-sent-outdoors")]
    [InlineData("danio-rerio", "Put it in the garden pond for the summer.", "no-fish-is-sent-outdoors")]
    [InlineData("danio-rerio", "Unwanted ones can go to a friend's pond.", "no-fish-is-sent-outdoors")]
    [InlineData("danio-rerio", "It may spend the summer outdoors.", "no-fish-is-sent-outdoors")]
    [InlineData("danio-rerio", "It can live in your pond from May.", "no-fish-is-sent-outdoors")]
    [InlineData("danio-rerio", "Release the young into a lake.", "no-fish-is-sent-outdoors")]
    [InlineData("danio-rerio", "It can only be released where it is warm.", "no-fish-is-sent-outdoors")]
    [InlineData("danio-rerio",
        "It is perfectly safe for toddlers to feed by hand.", "nothing-is-called-safe-for-children")]
    [InlineData("danio-rerio", "Children may touch it.", "nothing-is-called-safe-for-children")]
    [InlineData("danio-rerio", "It is harmless to children.", "nothing-is-called-safe-for-children")]
    [InlineData("danio-rerio",
        "It is an ideal fish, suitable for small children.", "nothing-is-called-safe-for-children")]
    [InlineData("danio-rerio", "Let the kids stroke it.", "nothing-is-called-safe-for-children")]
    [InlineData("danio-rerio", "It never jumps and needs no cover.", "no-lid-is-left-off")]
    [InlineData("danio-rerio", "Leave the tank open.", "no-lid-is-left-off")]
    [InlineData("danio-rerio", "An open top will do.", "no-lid-is-left-off")]
    [InlineData("hoplisoma-panda", "Keep it singly.", "words-and-group-agree")]
    [InlineData("hoplisoma-panda", "Keep a pair.", "words-and-group-agree")]
    [InlineData("hoplisoma-panda", "A single one is happy by itself.", "words-and-group-agree")]
    [InlineData("hoplisoma-panda", "It lives well on its own.", "words-and-group-agree")]
    [InlineData("danio-rerio", "A week at 31 degrees rids it of white spot.", "no-dose-is-told")]
    [InlineData("danio-rerio", "Put in twice what the bottle says.", "no-dose-is-told")]
    [InlineData("danio-rerio", "You may buy it anywhere without a permit.", "no-word-on-what-is-lawful")]
    [InlineData("danio-rerio", "Tip leftovers into the nearest ditch.", "no-fish-is-sent-outdoors")]
    public void What_must_not_be_said_is_told(string entry, string sentence, string rule)
    {
        Assert.Contains(rule, Spoken(entry, sentence));
        Assert.Contains(rule, Spoken(entry, sentence, asCaution: true));
    }

    [Theory]
    [InlineData("hoplisoma-panda", "A pair is not enough, and a single one must never be kept.")]
    [InlineData("hoplisoma-panda", "A pair of scissors will do to trim the plants.")]
    [InlineData("hoplisoma-panda", "Only where the room stays warm all winter no heater is needed.")]
    [InlineData("hoplisoma-panda", "Without a heater it fades within a week.")]
    [InlineData("danio-rerio", "Without a lid it is lost on the carpet.")]
    [InlineData("hoplisoma-panda", "Never lay sharp gravel, for it wears the barbels.")]
    [InlineData("hoplisoma-panda", "Sharp gravel wears the barbels.")]
    [InlineData("polypterus-delhezi", "Nothing small is safe with it; it is not safe with neons.")]
    [InlineData("danio-rerio", "It must never go into a pond.")]
    [InlineData("danio-rerio", "Never, whatever the summer, put it into a pond.")]
    [InlineData("danio-rerio", "Float the bag, then release it into the tank.")]
    [InlineData("danio-rerio", "Ask the authority whether it is legal to keep.")]
    [InlineData("danio-rerio", "No fish is safe for children to handle.")]
    [InlineData("danio-rerio", "Unlike its brackish relatives it lives in fresh water.")]
    [InlineData("danio-rerio", "It is not brackish, and marine salt would be a mistake.")]
    [InlineData("danio-rerio", "Not in [brackish](word:brackish) water; it is no fish for brackish water.")]
    [InlineData("hoplisoma-panda", "Never touch its spines: they may be venomous, and a prick is for a doctor.")]
    [InlineData("hoplisoma-panda", "Its spines look harmless; still, let a doctor see a prick.")]
    [InlineData("hoplisoma-panda", "Venom or no venom, let a doctor see it.")]
    [InlineData("hoplisoma-panda", "Do not say that no doctor is needed.")]
    [InlineData("danio-rerio", "Nitrate stays below 20 mg in a litre.")]
    [InlineData("danio-rerio", "Give half a gram of flakes; ask a vet for the dose of any medicine.")]
    [InlineData("danio-rerio", "Feed a drop of powdered food a day.")]
    [InlineData("danio-rerio", "Twice a week, change 10 % of the water.")]
    [InlineData("dichotomyctere-nigroviridis", "A hydrometer shows the marine salt, 10 g in each litre.")]
    [InlineData("danio-rerio", "Even half the dose kills it; leave medicines to a vet.")]
    [InlineData("danio-rerio", "White spot often breaks out when the water falls below 20 °C.")]
    [InlineData("danio-rerio", "Many doses printed on bottles are too strong for it; let a vet set them.")]
    [InlineData("danio-rerio", "Feed a tablet of greens for every six fish.")]
    [InlineData("danio-rerio", "Refuse any that come without papers.")]
    [InlineData("danio-rerio", "Whether a permit is needed, only the authority knows.")]
    [InlineData("danio-rerio", "It must not be kept without a licence where the law asks for one.")]
    [InlineData("danio-rerio", "The law may forbid it: ask the authority whether a licence is needed.")]
    [InlineData("danio-rerio", "In the wild it lives in ponds and rivers.")]
    [InlineData("danio-rerio", "The young go deep into the stream.")]
    [InlineData("danio-rerio", "It comes from ponds that fall dry.")]
    [InlineData("danio-rerio", "Let it go its own way.")]
    [InlineData("danio-rerio", "The fry swim free after three days.")]
    [InlineData("danio-rerio", "Never set it free, nor put it into a pond.")]
    [InlineData("danio-rerio", "Never net it and put it into a pond.")]
    [InlineData("danio-rerio", "Never empty its tank into a drain.")]
    [InlineData("danio-rerio", "A child can help to feed it under the eye of a grown-up.")]
    [InlineData("danio-rerio", "It is not safe for children to touch.")]
    [InlineData("danio-rerio", "Children may not touch it.")]
    [InlineData("danio-rerio", "A lid without gaps is needed, for it never stays down and jumps.")]
    [InlineData("danio-rerio", "Never leave the tank open.")]
    [InlineData("hoplisoma-panda", "Keep a pair of tongs at hand.")]
    [InlineData("hoplisoma-panda", "Keep it alone and it sulks.")]
    [InlineData("hoplisoma-panda", "Never keep it singly.")]
    [InlineData("hoplisoma-panda", "Do not keep a pair.")]
    [InlineData("danio-rerio", "It may be unlawful to release it into a pond.")]
    [InlineData("danio-rerio", "Above 29 °C it may suffocate.")]
    [InlineData("danio-rerio", "Children wash their hands after feeding it.")]
    public void What_is_right_is_not_told(string entry, string sentence)
    {
        Assert.Empty(Spoken(entry, sentence));
        Assert.Empty(Spoken(entry, sentence, asCaution: true));
    }

    [Fact]
    public void The_words_are_shown_at_their_place()
    {
        var entry = With("hoplisoma-panda", "It asks for company.\nFor a small tank a pair\nis plenty.", false);
        var told = Proof.Describe(entry).Single(d => d.Values["rule"] == "words-and-group-agree");
        Assert.Equal("“pair is plenty”", told.Values["found"]);
        Assert.Equal(entry.Prose.Start.Start.Line + 1, told.Span.Start.Line);
        Assert.Equal("For a small tank a ".Length + 1, told.Span.Start.Column);
    }

    private static RuleProof Proof => new(RealContent.Collection);

    private static IEnumerable<string> Spoken(string name, string sentence, bool asCaution = false) =>
        Proof.Describe(With(name, sentence, asCaution)).Select(d => d.Values.GetValueOrDefault("rule", d.Code.Id));

    private static Entry With(string name, string sentence, bool asCaution)
    {
        var entry = RealContent.Collection.Entries.Single(e => e.Name == name);
        var words = new Sourced<string>(sentence, entry.Prose.Start);
        var path = asCaution ? "cautions" : "prose";
        return entry with { Fields = entry.Fields.With([new(path, new FieldWords([words], words.Span))]) };
    }
}
