namespace CareSheets.Rules.Wording;

/// <summary>
/// Whether a text makes little of a danger, by what it says around it: a tale, only mildly so, no need to bother a
/// doctor. A "not" before it turns it round: <c>this is no fairy tale</c>.
/// </summary>
internal static class Belittling
{
    private const string Helper = "doctor/doctors/hospital/medical/emergency/vet/gloves/help";

    /// <summary>These deny a danger wherever it is spoken of.</summary>
    private static readonly IReadOnlyList<SpokenPhrase> Denying = SpokenPhrase.All(
        "tale/tales/myth/myths/legend/legends/fable/fables/rumour/rumours/rumor/superstition/nonsense/folklore/" +
        "fiction/hearsay/scaremongering/imaginary",
        "only/merely/just/barely/scarcely/hardly mildly/slightly/weakly/faintly",
        "only/merely/just a/an nuisance/trifle/pinprick/scratch/tickle/inconvenience",
        "exaggerated/exaggeration/exaggerate/exaggerates/overrated/overstated/overblown/overdone",
        "doubtful/dubious/unproven/unfounded/groundless/disproved/disproven/refuted/trifling/trivial/negligible",
        "laugh/laughs/smile/smiles at you/that/this/it", $"{Helper} .. laugh/laughs/smile/smiles",
        "no need/reason/cause/point .. bother/worry/fear/fuss/ask/see/call/show/trouble",
        "there is nothing to worry/fear", "you/people/keepers/hands .. nothing to worry/fear",
        $"not worth .. {Helper}", "not worth a/the mention/mentioning/fuss/bother",
        $"nobody/none need/needs/needed .. {Helper}",
        $"no one/reader/keeper need/needs .. {Helper}", $"spare/forget/skip/ignore .. {Helper}", "no worse than",
        "no more venomous/poisonous/toxic/dangerous/harmful/painful than",
        "without/no any/good/real/much/reason reason/cause/ground", "without reason/cause/ground/need",
        "undeserved/unearned/unjustified/unwarranted", "hurt/hurts/smart/smarts/sting/stings less than",
        "less venomous/poisonous/painful/dangerous than", "never did .. harm", "on paper only", "only on paper",
        "in theory",
        "little more than a pinprick/scratch/tickle/nettle/nuisance", "safe to eat/touch/handle/hold/grab",
        "safely .. eaten/touched/handled/held",
        "never hurt/harmed/stung/bitten/killed/poisoned anyone/anybody/a/one/us/me");

    /// <summary>These deny that nobody may eat it.</summary>
    private static readonly IReadOnlyList<SpokenPhrase> Eating = SpokenPhrase.All(
        "edible", "can/may/could/might be .. eaten/cooked/fried/served", "good/fine/safe/fit/nice to eat",
        "eat it/them/one if/with/fried/raw/cooked", "people eat it/them", "delicacy/delicious/tasty");

    /// <summary>These leave a caution in doubt, which is a reason to tell the hazard beside it.</summary>
    private static readonly IReadOnlyList<SpokenPhrase> Doubting = SpokenPhrase.All(
        "whether", "otherwise", "doubt/doubts/doubted/disputed/questionable/debatable/unlikely/untrue/wrongly",
        "people/they/books/keepers/some/sailors/many think/thinks/believe/believes/say/says/claim/claims/fancy",
        "can/may/could/might/will wait", "if you like/want/wish/care/insist/must/enjoy/love",
        "supposedly/allegedly/reputedly",
        "so called", "bare/plain/naked/empty/your hand/hands do/does/will/suffice/suffices",
        "with/in/by bare/plain/naked/empty/your/the hand/hands", "by hand", "bother/bothers/worry/fuss", "edible",
        "only/merely/just the liver/skin/roe/young/old/wild/big/large", "old wives",
        "once/formerly thought/believed", "thought/believed to have been");

    /// <summary>The first words of these clauses that deny a danger.</summary>
    /// <param name="alsoEating">Whether saying that it can be eaten denies it.</param>
    public static Said? Denied(IReadOnlyList<SaidClause> clauses, bool alsoEating) =>
        First(clauses, alsoEating ? Denying.Concat(Eating) : Denying);

    /// <summary>The first words that leave it in doubt, or that deny it.</summary>
    public static Said? Doubted(IReadOnlyList<SaidClause> clauses, bool alsoEating) =>
        Denied(clauses, alsoEating) ?? First(clauses, Doubting);

    private static Said? First(IReadOnlyList<SaidClause> clauses, IEnumerable<SpokenPhrase> phrases) =>
        phrases.SelectMany(phrase => clauses.SelectMany(phrase.In)).FirstOrDefault(said => !Denial.IsTurned(said));
}
