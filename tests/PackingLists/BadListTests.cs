using System.IO.Compression;
using System.Text;
using CareSheets.Diagnostics;
using CareSheets.Names;
using CareSheets.Names.Matching;
using CareSheets.PackingLists;
using CareSheets.Tests.Names;


namespace CareSheets.Tests.PackingLists;

/// <summary>Lists as they should not be: each has its message, and none stops the program.</summary>
public sealed class BadListTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("caresheets-list-").FullName;

    public static TheoryData<string, byte[], string> Refused() => new()
    {
        { "empty.csv", [], "AR954" },
        { "blank.csv", "\n\n;;;\n"u8.ToArray(), "AR954" },
        { "headings.csv", "Latin name;Qty\n"u8.ToArray(), "AR954" },
        { "numbers.csv", "1;2;3\n4;5;6\n7;8;9\n"u8.ToArray(), "AR953" },
        { "no-names.csv", "Colour;Weight\nred;3\nblue;4\n"u8.ToArray(), "AR953" },
        { "picture.csv", [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0, 1, 2, 3], "AR951" },
        { "damaged.xlsx", "PK\u0003\u0004 and then nothing"u8.ToArray(), "AR951" },
        { "zip.xlsx", Zip(("readme.txt", "no workbook")), "AR951" },
        { "damaged.xls", [0xD0, 0xCF, 0x11, 0xE0, 0xA1, 0xB1, 0x1A, 0xE1, 0, 0], "AR951" },
        { "bomb.xlsx", Zip(("xl/worksheets/sheet1.xml", new string('a', 70_000_000))), "AR952" },
        { "long.csv", [.. Enumerable.Repeat("Danio rerio;1\n"u8.ToArray(), 20_002).SelectMany(b => b)], "AR952" },
    };

    [Theory]
    [MemberData(nameof(Refused))]
    public void A_list_that_can_t_be_used_says_why(string name, byte[] bytes, string code)
    {
        var (list, found) = Read(name, bytes);
        Assert.Null(list);
        Assert.Equal([code], found.Select(d => d.Code.Id));
        Assert.DoesNotContain("{", found[0].Message + found[0].Hint, StringComparison.Ordinal);
    }

    [Fact]
    public void Fifty_megabytes_are_refused_before_they_are_read()
    {
        var path = Path.Combine(_folder, "huge.csv");
        using (var file = File.Create(path))
            file.SetLength(50L * 1024 * 1024);
        var (list, found) = Read(path);
        Assert.Null(list);
        Assert.Equal("AR952", Assert.Single(found).Code.Id);
    }

    [Fact]
    public void A_file_that_is_not_there_is_told() =>
        Assert.Equal("AR951", Assert.Single(Read("nowhere.csv").Found).Code.Id);

    [Theory]
    [InlineData("=cmd|' /C calc'!A0")]
    [InlineData("@SUM(A1:A9)")]
    [InlineData("+danio(1)")]
    public void A_cell_that_a_spreadsheet_would_run_is_text_here_and_told(string cell)
    {
        var (list, found) = Read("formula.csv", $"Name;Qty;Notes\nDanio rerio;5;\"{cell}\"\n");
        Assert.Equal("danio-rerio", Assert.Single(list!.Lines).Entry);
        Assert.Equal("AR955", Assert.Single(found).Code.Id);
        Assert.Contains(cell[..5], ArrivalText.Print(list, "Oldmere", new DateOnly(2026, 11, 24), "x.csv",
            new CarriedOver(null, list)));
    }

    [Fact]
    public void A_line_of_ten_thousand_letters_is_left_out_and_told()
    {
        var wide = new string('x', 10_000);
        var (list, found) = Read("wide.csv", $"Name;Qty\nDanio rerio;5\n{wide};6\nBetta splendens;7\n");
        Assert.Equal(["danio-rerio", "betta-splendens"], list!.Lines.Select(l => l.Entry));
        Assert.Equal("AR956", Assert.Single(found).Code.Id);
        Assert.Contains("10,002", found[0].Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Lines_of_two_encodings_are_read_each_in_its_own()
    {
        byte[] bytes =
        [
            .. Encoding.UTF8.GetBytes("Name;Größe;Qty\nDanio rerio;3 cm;5\n"),
            .. Encoding.Latin1.GetBytes("Nothobranchius güntheri;4 cm;6\n"),
        ];
        var (list, found) = Read("mixed.csv", bytes);
        Assert.Equal(["danio-rerio", "nothobranchius-guentheri"], list!.Lines.Select(l => l.Entry));
        Assert.Equal("AR957", Assert.Single(found).Code.Id);
    }

    [Theory]
    [InlineData("utf-8")]
    [InlineData("utf-16")]
    [InlineData("utf-16BE")]
    [InlineData("iso-8859-1")]
    public void Every_usual_encoding_with_and_without_its_mark_gives_the_same_list(string encoding)
    {
        const string text = "Größe;Name;Stück\n4 cm;Nothobranchius güntheri;6\n";
        var coding = Encoding.GetEncoding(encoding);
        foreach (var bytes in new[] { coding.GetBytes(text), [.. coding.GetPreamble(), .. coding.GetBytes(text)] })
        {
            var line = Assert.Single(Read("list.csv", bytes).List!.Lines).Line;
            Assert.Equal(("Nothobranchius güntheri", 6, "4 cm"), (line.NameText, line.Count, line.Size));
        }
    }

    [Theory]
    [InlineData(";")]
    [InlineData(",")]
    [InlineData("\t")]
    [InlineData("|")]
    public void Every_usual_delimiter_and_any_order_of_columns_gives_the_same_list(string delimiter)
    {
        foreach (var order in new[] { new[] { 0, 1, 2 }, [2, 0, 1], [1, 2, 0] })
        {
            string[][] rows =
                [["Latin name", "Qty", "Size"], ["Danio rerio", "50", "3-4 cm"], ["Betta splendens", "4", "5 cm"]];
            var text = string.Join('\n', rows.Select(r => string.Join(delimiter, order.Select(i => r[i]))));
            var list = Read("list.csv", "Oldmere\n\n" + text + "\n").List!;
            Assert.Equal(["danio-rerio 50 3–4 cm", "betta-splendens 4 5 cm"],
                list.Lines.Select(l => $"{l.Entry} {l.Line.Count} {l.Line.Size}"));
        }
    }

    [Fact]
    public void A_list_without_headings_is_read_by_what_stands_in_it() => Assert.Equal(
        ["danio-rerio", "betta-splendens"],
        Read("bare.csv", "1;Danio rerio;50\n2;Betta splendens;4\n").List!.Lines.Select(l => l.Entry));

    [Fact]
    public void No_bytes_stop_the_reader()
    {
        var random = new Random(20261125);
        for (var i = 0; i < 300; i++)
        {
            var bytes = new byte[random.Next(400)];
            random.NextBytes(bytes);
            if (i % 3 == 0)
                bytes = Encoding.UTF8.GetBytes("Name;Qty\n" + Encoding.Latin1.GetString(bytes).Replace('\0', ' '));
            if (i % 7 == 0)
                bytes = [0x50, 0x4B, 0x03, 0x04, .. bytes];
            var (list, found) = Read("random.csv", bytes);
            Assert.True(list is not null || found.Count > 0);
        }
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private (PackingList? List, IReadOnlyList<Diagnostic> Found) Read(string name, string text) =>
        Read(name, Encoding.UTF8.GetBytes(text));

    private (PackingList? List, IReadOnlyList<Diagnostic> Found) Read(string name, byte[] bytes)
    {
        var path = Path.Combine(_folder, name);
        File.WriteAllBytes(path, bytes);
        return Read(path);
    }

    private static (PackingList? List, IReadOnlyList<Diagnostic> Found) Read(string path)
    {
        var bag = new DiagnosticBag();
        var matcher = new NameMatcher(
            new NameIndex(
            [
                NameMatcherTests.Species("Danio rerio", "", "zebra danio"),
                NameMatcherTests.Species("Betta splendens", "", "betta"),
                NameMatcherTests.Species("Nothobranchius guentheri", "", ""),
            ]),
            GenusTable.Known);
        var list = new PackingListReader(matcher, new RememberedAnswers([]), bag).Read(path, "list.csv");
        return (list, bag.Sorted());
    }

    private static byte[] Zip(params (string Name, string Text)[] files)
    {
        using var stream = new MemoryStream();
        using (var zip = new ZipArchive(stream, ZipArchiveMode.Create))
        {
            foreach (var (name, text) in files)
            {
                using var writer = new StreamWriter(zip.CreateEntry(name).Open());
                writer.Write(text);
            }
        }
        return stream.ToArray();
    }
}
