using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Reading.Conditions;
using CareSheets.Species;

namespace CareSheets.Reading;

/// <summary>
/// Tree of an entry to its record. It binds what it can and complains only about what a schema
/// can't see: figures and evidence. Where something required is missing there is no entry.
/// </summary>
internal sealed class EntryBinder(EntrySchema schema, DiagnosticBag bag)
{
    private readonly QuantityBinder _quantities = new(bag);

    public Entry? Bind(SourceFile file, YamlMapping root, FrontMatter text)
    {
        var fields = new Fields(root);
        var evidence = EvidenceWord.Read(fields.Text("evidence"));
        var care = new CareBinder(schema, _quantities, bag);
        var ranges = care.Ranges(fields.Inner("care"), evidence ?? Unknown(root));
        var (adult, tank, company) = (Adult(fields), Tank(fields), Company(fields));
        if (IsDraft(fields))
        {
            bag.Add(ReadingCodes.Draft, fields.Text("draft")!.Span);
            return null;
        }
        if (Name(fields, "scientificName") is not { } name || Name(fields, "originalNameUsage") is not { } original ||
            fields.Text("scientificNameAuthorship") is not { } authorship || evidence is null ||
            fields.Text("order") is not { } order || fields.Text("family") is not { } family ||
            fields.Texts("vernacularName") is not { Count: > 0 } vernacular ||
            adult is null || tank is null || company is null ||
            new DateBinder(bag).Day(fields.Text("reviewed"), "reviewed") is not { } reviewed)
            return null;
        return new Entry
        {
            Name = Path.GetFileNameWithoutExtension(file.Path),
            Span = name.Span,
            ScientificName = name,
            Authorship = authorship.With(new Authorship(authorship.Value)),
            OriginalName = original,
            VernacularNames = vernacular,
            FormerNames = [.. fields.Texts("formerNames").Select(Name).OfType<Sourced<ScientificName>>()],
            Say = fields.Text("say"),
            TradeCodes = fields.Texts("tradeCodes"),
            Order = order,
            Family = family,
            Origin = Origin(fields.Inner("origin")),
            Adult = adult,
            Ranges = ranges,
            CareWords = care.Words(fields.Inner("care")),
            Tank = tank,
            Company = company,
            Diet = fields.Texts("diet"),
            Foods = fields.Texts("foods"),
            Cautions = fields.Texts("cautions"),
            Evidence = evidence,
            References = fields.Texts("references"),
            Reviewed = reviewed.Value,
            Prose = new Prose(text.Prose, file.Span(text.ProseLine, 1)),
            Accepted = AnswersBinder.Accepted(fields),
            Waived = AnswersBinder.Waived(fields),
            Fields = new EntryFieldsBinder(schema.Catalogue)
                .Bind(root, new Sourced<string>(text.Prose, file.Span(text.ProseLine, 1))),
            Activity = AdviceBinder.Activity(fields, evidence),
            Advice = AdviceBinder.Advice(fields),
        };
    }

    private static Origin Origin(Fields origin) => new(
        origin.Texts("countryCode"), origin.Texts("waterBody"), origin.Text("locality"), origin.Texts("habitat"));

    private Adult? Adult(Fields fields)
    {
        var adult = fields.Inner("adult");
        var length = _quantities.BindClosed(adult.Text("length"), schema.Quantity("adult.length"), "adult.length");
        var height = _quantities.BindClosed(adult.Text("height"), schema.Quantity("adult.height"), "adult.height");
        var span = _quantities.Bind(adult.Text("lifeSpan"), schema.Quantity("adult.lifeSpan"), "adult.lifeSpan");
        return length is null || adult.Text("shape") is not { } shape || adult.Text("mouth") is not { } mouth
            ? null
            : new Adult(length, height, shape, mouth, span, adult.Text("sexes"))
            {
                Fins = adult.Text("fins"),
                Evidence = Own(adult),
            };
    }

    private Tank? Tank(Fields fields)
    {
        var tank = fields.Inner("tank");
        Sourced<Quantities.StatedRange>? Figure(string name) =>
            _quantities.BindClosed(tank.Text(name), schema.Quantity($"tank.{name}"), $"tank.{name}");
        var (length, width, height, volume) = (Figure("length"), Figure("width"), Figure("height"), Figure("volume"));
        return length is null || volume is null ||
            tank.Text("substrate") is not { } substrate || tank.Text("lid") is not { } lid
            ? null
            : new Tank(length, width, height, volume, substrate, lid, tank.Texts("needs")) { Evidence = Own(tank) };
    }

    private static Company? Company(Fields fields)
    {
        var company = fields.Inner("company");
        return company.Text("lives") is { } lives && company.Integer("group") is { } group &&
            company.Text("own kind") is { } own && company.Text("others") is { } others
            ? new Company(lives, group, own, others, company.Texts("level"), company.Texts("eats"))
            {
                Neighbours = company.Text("neighbours"),
                NotWith = company.Texts("not with"),
                Evidence = Own(company),
            }
            : null;
    }

    private static Evidence? Own(Fields part) => EvidenceWord.Read(part.Text("evidence"));

    public static bool IsDraft(Fields fields) => fields.Text("draft")?.Value is "true" or "True" or "TRUE";

    private static Sourced<ScientificName>? Name(Fields fields, string field) =>
        fields.Text(field) is { } text ? Name(text) : null;

    private static Sourced<ScientificName>? Name(Sourced<string> text) =>
        ScientificName.Parse(text.Value) is { } name ? text.With(name) : null;

    /// <summary>Stands in while the figures of an entry without evidence are checked; it is never shown.</summary>
    private static Evidence Unknown(YamlMapping root) => new(EvidenceKind.FromMemory, "", root.Span);
}
