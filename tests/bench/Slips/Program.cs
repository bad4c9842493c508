using System.Globalization;
using CareSheets.Commands;
using CareSheets.Tests.Relatives;

// Slips of each kind in 5 % of the values of this collection, over many seeds: how many are found, and how
// often a clean value is called wrong. First as the collection is; then as if nobody had answered anything.
var seeds = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 20;
var bench = new Workbench(new ContentSettings());
var collection = bench.ReadCollection() ?? throw new InvalidOperationException("The content has errors: run proof.");
var unanswered = new CareSheets.Collection.SpeciesCollection(
    collection.Store, [.. collection.Entries.Select(e => e with { Accepted = [] })],
    collection.References.Values, collection.Glossary, collection.Figures, collection.Known);
(string Kind, string Field)[] kinds =
[
    ("Fahrenheit typed as Celsius", "temperature"), ("Celsius typed as Fahrenheit", "temperature"),
    ("ppm typed as degrees", "hardness"), ("degrees typed as ppm", "hardness"),
    ("centimetres typed as inches", "adult.length"), ("inches typed as centimetres", "adult.length"),
    ("standard for total length", "adult.length"), ("decimal lost", "ph"), ("decimal lost", "adult.length"),
    ("two rows exchanged", "temperature"), ("two rows exchanged", "adult.length"),
    ("middle moved by 3 sd", "temperature"), ("middle moved by 3 sd", "ph"),
];
foreach (var (title, content) in new[] { ("as it is", collection), ("nothing accepted", unanswered) })
{
    Console.WriteLine(title);
    foreach (var (kind, field) in kinds)
    {
        var slips = new PlantedSlips(content, kind, field);
        for (var seed = 1; seed <= seeds; seed++)
            slips.Run(seed);
        Console.WriteLine($"  {slips}");
    }
}
