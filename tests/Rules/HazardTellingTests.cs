using CareSheets.Rules;
using CareSheets.Tests.Support;

namespace CareSheets.Tests.Rules;

/// <summary>
/// Whether a caution tells of a hazard of the repository's own file, or denies it. The sentences are made up;
/// what is looked at is the wording alone.
/// </summary>
public sealed class HazardTellingTests
{
    [Theory]
    [InlineData("Never take it in the hand; its spines may be venomous; see a doctor.")]
    [InlineData("Its spines may be venomous; do not touch them, and see a doctor about any prick.")]
    [InlineData("Though not large, it has venomous spines, and a prick is for a doctor.")]
    [InlineData("Its spines are not only long but venomous too; show a doctor any prick.")]
    [InlineData("Never underestimate its spines: they are no doubt venomous, and a doctor should see each wound.")]
    [InlineData("Do not lift it without gloves, for the spines carry venom; see a doctor.")]
    [InlineData("Harmless to other fish, but its spines may be venomous; show a doctor any prick.")]
    [InlineData("It looks harmless, yet its spines are venomous: see a doctor.")]
    [InlineData("It is not harmless; venomous spines lock upright, and a doctor should see a wound.")]
    [InlineData("A harmless-looking fish with spines that may hold venom; let a doctor see a prick.")]
    [InlineData("It can not be held in the hand, since the spines are venomous; never put off the doctor.")]
    public void Telling_in_the_writers_own_words_counts(string caution)
    {
        Assert.True(Hazard("catfish-spines").IsToldBy(caution));
        Assert.Null(Hazard("catfish-spines").DeniedBy(caution));
    }

    [Theory]
    [InlineData("Its spines are not venomous, so no doctor is needed; lift it out by hand.")]
    [InlineData("Its spines aren't venomous; a doctor is not needed.")]
    [InlineData("The spines carry no venom, and a doctor need not be asked.")]
    [InlineData("Its spines are without any venom; a doctor would be unnecessary.")]
    [InlineData("The spines are harmless; neither venom nor a doctor is a concern.")]
    [InlineData("People call its spines venomous, but they are harmless; forget the doctor.")]
    [InlineData("The spines prick but were never venomous; see a doctor if you like.")]
    [InlineData("Its spines have never been known to be venomous; see a doctor if you like.")]
    [InlineData("Its spines are venomous, and it is quite harmless to people; ask no doctor.")]
    [InlineData("Its spines may be venomous; no doctor is needed.")]
    [InlineData("Its spines may be venomous; a doctor is hardly necessary.")]
    public void A_denial_does_not_count_and_is_found(string caution)
    {
        Assert.False(Hazard("catfish-spines").IsToldBy(caution));
        Assert.NotNull(Hazard("catfish-spines").DeniedBy(caution));
    }

    [Theory]
    [InlineData("puffer-flesh", "It is poisonous; never eat it; call the emergency number if somebody did.", true)]
    [InlineData("puffer-flesh", "It is poisonous and must never be eaten; after that it is an emergency.", true)]
    [InlineData("puffer-flesh", "Poisonous: nobody and no pet may eat one, or it is an emergency.", true)]
    [InlineData("puffer-flesh", "Its flesh is not poisonous, and people eat it; no emergency follows.", false)]
    [InlineData("outgrows-tanks", "It grows huge; rehome it through the shop and never release it.", true)]
    [InlineData("outgrows-tanks", "Return it to the shop when it is large, never into open water.", true)]
    [InlineData("outgrows-tanks", "It needs no new home when grown; never release it.", false)]
    [InlineData("eats-small-fish", "No fish that fits its mouth is safe.", true)]
    [InlineData("eats-small-fish", "It cannot swallow big fish, but hunts small ones.", true)]
    [InlineData("eats-small-fish", "It does not swallow anything that lives.", false)]
    [InlineData("electric-shock", "Never risk a shock; after one, call for medical help.", true)]
    [InlineData("electric-shock", "It gives no shock worth a doctor.", false)]
    [InlineData("strong-bites", "It does not bite; a doctor is never needed.", false)]
    [InlineData("strong-bites", "Never put a finger near it: it bites, and a deep bite is for a doctor.", true)]
    public void What_a_hazard_forbids_itself_may_be_forbidden(string hazard, string caution, bool isTold) =>
        Assert.Equal(isTold, Hazard(hazard).IsToldBy(caution));

    [Theory]
    [InlineData("No doctor could say why it likes slate.")]
    [InlineData("It does not eat dry food.")]
    [InlineData("Needs no open water.")]
    public void What_speaks_of_something_else_denies_nothing(string text) =>
        Assert.All(RealContent.Collection.Practice.Hazards.Where(h => h.Kind <= HazardKind.LockingSpines),
            hazard => Assert.Null(hazard.DeniedBy(text)));

    /// <summary>So the cautions that stand in for a hazard today are the very same as by words alone.</summary>
    [Fact]
    public void No_caution_of_the_collection_is_taken_for_a_denial()
    {
        foreach (var hazard in RealContent.Collection.Practice.Hazards.Where(h => h.Told.Count > 0))
        {
            foreach (var caution in RealContent.Collection.Entries.SelectMany(e => e.Cautions))
                Assert.Equal(HasItsWords(hazard, caution.Value), hazard.IsToldBy(caution.Value));
        }
    }

    private static bool HasItsWords(Hazard hazard, string caution) =>
        hazard.Told.All(group => group.Any(word => Mentions.Holds(caution, word)));

    private static Hazard Hazard(string name) =>
        RealContent.Collection.Practice.Hazards.Single(h => h.Name.Value == name);
}
