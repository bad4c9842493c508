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

    /// <summary>What belittles a hazard, or leaves it in doubt, never takes its place, and is found.</summary>
    [Theory]
    [InlineData("Old books call its spines venomous, which is a fairy tale; no need to bother a doctor.")]
    [InlineData("The spines are only mildly venomous, so plain hands do; a doctor will laugh at you.")]
    [InlineData("People think its spines are venomous, but any doctor will tell you otherwise.")]
    [InlineData("Whether its spines are venomous is doubtful; the doctor can wait.")]
    [InlineData("That venomous spines need a doctor is a myth; use your hand.")]
    [InlineData("Its spines are venomous, but no worse than a nettle; keep the doctor for real trouble.")]
    [InlineData("The danger of its venomous spines is exaggerated; never mind the doctor.")]
    [InlineData("Venomous spines have never hurt anyone here; take it to a doctor if you like.")]
    [InlineData("Its spines may be venomous; lift it with your hands, and see a doctor about nothing.")]
    [InlineData("Its spines may be venomous, and nobody needs a doctor; keep calm.")]
    [InlineData("Supposedly its spines are venomous; ask a doctor who believes it.")]
    [InlineData("The venomous spines are much feared, quite without reason; see a doctor if you must.")]
    [InlineData("Its spines, venomous they say, hurt less than a bee; ask any doctor.")]
    [InlineData("You will not need a doctor for its venomous spines; use a wet hand.")]
    [InlineData("Its spines look fierce but are harmless to people.")]
    public void What_makes_little_of_a_hazard_is_found(string caution)
    {
        Assert.False(Hazard("catfish-spines").IsToldBy(caution));
        Assert.NotNull(Hazard("catfish-spines").DeniedBy(caution) ?? Hazard("catfish-spines").DoubtedBy(caution));
    }

    [Theory]
    [InlineData("Only the liver is poisonous; the rest can be eaten, and in an emergency it fed whole villages.")]
    [InlineData("Poisonous flesh is a tale of sailors: eat it if you like, in an emergency with lemon.")]
    [InlineData("Its flesh is perfectly edible.")]
    [InlineData("Those raised in tanks hold no poison and nobody needs the emergency number.")]
    [InlineData("Cooked well the flesh is safe to eat.")]
    [InlineData("It is not toxic.")]
    public void That_poisonous_flesh_can_be_eaten_is_found(string text)
    {
        Assert.False(Hazard("puffer-flesh").IsToldBy(text));
        Assert.NotNull(Hazard("puffer-flesh").DeniedBy(text));
    }

    /// <summary>Honest words near those of a denial; none is denied or doubted.</summary>
    [Theory]
    [InlineData("catfish-spines", "Venom or no venom, let a doctor see it.")]
    [InlineData("catfish-spines", "Do not say that no doctor is needed.")]
    [InlineData("catfish-spines", "Nobody should think that its spines are not venomous; see a doctor.")]
    [InlineData("catfish-spines", "Venomous spines are no fairy tale: show a doctor every prick.")]
    [InlineData("catfish-spines", "Its spines may be venomous; never lift it by hand, and let a doctor see a prick.")]
    [InlineData("catfish-spines", "The spines may be mildly venomous; it is not worth the risk, so use a tub.")]
    [InlineData("puffer-flesh", "Nothing of it is edible: its flesh is poisonous.")]
    [InlineData("puffer-flesh", "Its flesh is poisonous, and no part of it can be eaten.")]
    [InlineData("puffer-flesh", "Snails can be eaten shell and all.")]
    public void Honest_words_are_no_denial(string hazard, string text)
    {
        Assert.Null(Hazard(hazard).DeniedBy(text));
        Assert.Null(Hazard(hazard).DoubtedBy(text));
    }

    /// <summary>Without a word on what to do the hazard's own words are told too.</summary>
    [Theory]
    [InlineData("Its spines may be venomous, said a doctor.")]
    [InlineData("The doctor knows its venomous spines well.")]
    [InlineData("Its spines may be venomous; keep calm and the doctor out of it.")]
    [InlineData("Its spines may be venomous; use a tub, as our doctor does.")]
    public void Without_advice_nothing_takes_the_place_of_a_hazard(string caution)
    {
        Assert.True(Hazard("catfish-spines").IsNamedBy(caution));
        Assert.False(Hazard("catfish-spines").IsToldBy(caution));
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
            hazard => Assert.Null(hazard.DeniedBy(text) ?? hazard.DoubtedBy(text)));

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
