#include "program_run.h"
#include "tests/support/process.h"
#include "ui/paper/label_layout.h"

#include <catch2/catch.hpp>
#include <nlohmann/json.hpp>

#include <algorithm>
#include <map>
#include <regex>

using namespace warmbench::tests;

namespace {

const char* const sampleHouse = WARMBENCH_SOURCE "/sample-data/nursery.json";

std::size_t timesIn(const std::string& text, const std::string& part) {
    std::size_t count = 0;
    for (auto at = text.find(part); at != std::string::npos; at = text.find(part, at + part.size())) ++count;
    return count;
}

/// The text of a PDF, with all blanks and line ends as single blanks.
std::string textOf(const std::string& pdf) {
    const ProgramRun run = runProcess("/usr/bin/pdftotext", {"-raw", pdf, "-"});
    REQUIRE(run.status == 0);
    std::string flat;
    for (const char c : run.out) {
        const bool blank = c == ' ' || c == '\n' || c == '\f';
        if (!blank || (!flat.empty() && flat.back() != ' ')) flat += blank ? ' ' : c;
    }
    return flat;
}

/// Every word of a PDF lies inside its page.
void checkInsidePages(const std::string& pdf) {
    const ProgramRun run = runProcess("/usr/bin/pdftotext", {"-bbox", pdf, "-"});
    REQUIRE(run.status == 0);
    double width = 0;
    double height = 0;
    int words = 0;
    std::istringstream lines(run.out);
    for (std::string line; std::getline(lines, line);) {
        double left = 0;
        double top = 0;
        double right = 0;
        double bottom = 0;
        if (std::sscanf(line.c_str(), " <page width=\"%lf\" height=\"%lf\">", &width, &height) == 2) continue;
        if (std::sscanf(line.c_str(), " <word xMin=\"%lf\" yMin=\"%lf\" xMax=\"%lf\" yMax=\"%lf\">", &left,
                        &top, &right, &bottom) != 4)
            continue;
        ++words;
        INFO(line);
        CHECK((left >= 0 && top >= 0 && right <= width && bottom <= height));
    }
    CHECK(words > 10);
}

constexpr int dotsPerInch = 300;

/// A page as grey dots.
struct Page {
    int width = 0;
    int height = 0;
    std::string dots; ///< row by row
};

Page readPage(const std::filesystem::path& pgm) {
    const std::string file = fileText(pgm);
    Page page;
    int most = 0;
    int head = 0;
    REQUIRE(std::sscanf(file.c_str(), "P5 %d %d %d%n", &page.width, &page.height, &most, &head) == 3);
    page.dots = file.substr(static_cast<std::size_t>(head) + 1);
    REQUIRE(page.dots.size() == static_cast<std::size_t>(page.width) * static_cast<std::size_t>(page.height));
    return page;
}

/// One label of a page as a picture of its own, as a reader held to it sees it.
void writeLabel(const Page& page, const QRectF& millimetres, const std::filesystem::path& file) {
    const auto dots = [](double length) { return static_cast<int>(length / 25.4 * dotsPerInch); };
    const int left = dots(millimetres.left());
    const int top = dots(millimetres.top());
    const int width = std::min(dots(millimetres.width()), page.width - left);
    const int height = std::min(dots(millimetres.height()), page.height - top);
    std::ofstream out(file, std::ios::binary);
    out << "P5 " << width << ' ' << height << " 255\n";
    for (int row = top; row < top + height; ++row)
        out << page.dots.substr(static_cast<std::size_t>(row) * static_cast<std::size_t>(page.width) +
                                    static_cast<std::size_t>(left),
                                static_cast<std::size_t>(width));
}

/// How often each QR code is read on the labels of a PDF, label by label.
std::map<std::string, int> codesOn(const std::string& pdf, const warmbench::ui::LabelLayout& layout,
                                   const std::filesystem::path& folder) {
    REQUIRE(runProcess("/usr/bin/pdftoppm",
                       {"-r", std::to_string(dotsPerInch), "-gray", pdf, (folder / "page").string()})
                .status == 0);
    std::vector<std::string> call{"-q", "--raw", "-Sdisable", "-Sqrcode.enable"};
    std::vector<std::filesystem::path> pages;
    for (const auto& entry : std::filesystem::directory_iterator(folder))
        if (entry.path().extension() == ".pgm") pages.push_back(entry.path());
    for (const auto& file : pages) {
        const Page page = readPage(file);
        for (int place = 0; place < layout.perPage(); ++place) {
            call.push_back(file.string() + "-label-" + std::to_string(place) + ".pgm");
            writeLabel(page, layout.rectOf(place), call.back());
        }
    }
    std::map<std::string, int> codes;
    std::istringstream lines(runProcess("/usr/bin/zbarimg", call).out);
    for (std::string line; std::getline(lines, line);) ++codes[line];
    return codes;
}

/// A book of the sample nursery with its next month planned, made once.
const std::string& plannedBook() {
    static const TemporaryFolder folder;
    static const std::string book = [] {
        std::string made = (folder.path() / "n.warmbench").string();
        REQUIRE(runWith({"new", made, "--from", sampleHouse}).status == 0);
        REQUIRE(runWith({"plan", made, "--from", "2026-12-01", "--days", "28", "--rounds", "500", "--accept"})
                    .status == 0);
        return made;
    }();
    return book;
}

struct Printed {
    TemporaryFolder folder;
    std::string book = plannedBook();
    std::string pdf = (folder.path() / "out.pdf").string();

    ProgramRun print(const std::string& kind, const std::vector<std::string>& more) const {
        std::vector<std::string> arguments{"print", kind, book, "--out", pdf};
        arguments.insert(arguments.end(), more.begin(), more.end());
        return runWith(arguments);
    }
};

} // namespace

TEST_CASE(
    "Every label's QR code is read back from the printed sheet as its batch's code, and its text whole") {
    const Printed printed;
    REQUIRE(printed.print("labels", {"--from", "2026-12-01"}).error.empty());
    const std::map<std::string, int> codes = codesOn(printed.pdf, {}, printed.folder.path());
    REQUIRE(codes.size() > 3);
    const std::string text = textOf(printed.pdf);
    for (const auto& [code, count] : codes) {
        INFO(code);
        // A label a container, each with the container's number behind the code.
        CHECK(timesIn(text, code + "/") == static_cast<std::size_t>(count));
    }
    const std::regex container("[0-9]{2}-[0-9]{3}-[A-Z]+/[0-9]+");
    int labels = 0;
    for (const auto& [code, count] : codes) labels += count;
    CHECK(labels == std::distance(std::sregex_iterator(text.begin(), text.end(), container), {}));
    CHECK(has(text, "2026"));
    checkInsidePages(printed.pdf);
}

TEST_CASE("A label of the smallest height is read back too") {
    const Printed printed;
    REQUIRE(
        printed.print("labels", {"--roll", "40x10", "--from", "2026-12-01", "--days", "1"}).error.empty());
    const std::map<std::string, int> codes =
        codesOn(printed.pdf, warmbench::ui::LabelLayout::roll({40, 10}), printed.folder.path());
    REQUIRE_FALSE(codes.empty());
    for (const auto& [code, count] : codes)
        CHECK(timesIn(textOf(printed.pdf), code + "/") == static_cast<std::size_t>(count));
    checkInsidePages(printed.pdf);
}

TEST_CASE("The strike list names every planned batch with its cautions, inside the page") {
    const Printed printed;
    REQUIRE(printed.print("strike-list", {"--from", "2026-12-01"}).error.empty());
    const std::string text = textOf(printed.pdf);
    const ProgramRun batches = runWith({"export", printed.book, "--as", "csv", "--what", "batches"});
    const std::size_t planned = timesIn(batches.out, ",planned,");
    REQUIRE(planned > 10);
    CHECK(timesIn(text, "26-3") == planned);
    CHECK(has(text, "To have ready"));
    CHECK(has(text, "Local codes, product"));
    checkInsidePages(printed.pdf);
}

TEST_CASE("The morning's page says what to take, prepare, strike and set, inside the page") {
    const Printed printed;
    REQUIRE(printed.print("day", {"--from", "2026-12-01"}).error.empty());
    const std::string text = textOf(printed.pdf);
    for (const char* part :
         {"Tuesday 1 December 2026", "To strike", "To take", "To have ready", "Mats to set", "Care"})
        CHECK(has(text, part));
    CHECK(has(text, "26-335-A"));
    checkInsidePages(printed.pdf);
}

TEST_CASE("A round sheet lists the containers of the round in its order") {
    const Printed printed;
    REQUIRE(printed.print("round", {"--from", "2026-11-30"}).error.empty());
    const ProgramRun round = runWith({"round", printed.book, "--day", "2026-11-30"});
    REQUIRE(round.status == 0);
    const std::string text = textOf(printed.pdf);
    const std::regex container("[0-9]{2}-[0-9]{3}-[A-Z]+/[0-9]+");
    std::vector<std::string> told;
    for (std::sregex_iterator one(round.out.begin(), round.out.end(), container), end; one != end; ++one)
        if (told.empty() || told.back() != one->str()) told.push_back(one->str());
    REQUIRE(told.size() > 3);
    std::size_t at = 0;
    for (const std::string& code : told) {
        INFO(code);
        at = text.find(code, at);
        REQUIRE(at != std::string::npos);
    }
    checkInsidePages(printed.pdf);
}

TEST_CASE("A month's plan shows every planned batch, hands and what is needed, inside the page") {
    const Printed printed;
    CHECK(printed.print("month", {}).error.empty());
    REQUIRE(printed.print("month", {"--from", "2026-11-30", "--days", "35"}).error.empty());
    const std::string text = textOf(printed.pdf);
    for (const char* part : {"Month plan", "Hands week by week", "To have ready", "half a day"})
        CHECK(has(text, part));
    const ProgramRun batches = runWith({"export", printed.book, "--as", "csv", "--what", "batches"});
    const std::size_t planned = timesIn(batches.out, ",planned,");
    REQUIRE(planned > 10);
    const std::regex code("26-3[0-9]{2}-[A-Z]+");
    CHECK(static_cast<std::size_t>(std::distance(std::sregex_iterator(text.begin(), text.end(), code), {})) >=
          planned);
    checkInsidePages(printed.pdf);
    CHECK(has(printed.print("month", {"--from", "2026-11-30", "--days", "90"}).error, "at most 84"));
}

TEST_CASE("A season's report tells of every taxon and target, with plots, inside the page") {
    const Printed printed;
    REQUIRE(printed.print("season", {"--from", "2025-12-01", "--seen", "2026-11-30"}).error.empty());
    const std::string text = textOf(printed.pdf);
    for (const char* part :
         {"Season's report", "What was wanted and made", "Take and losses", "Bench and heat for each plant",
          "What the stock plants gave", "What to change next year, and on what evidence"})
        CHECK(has(text, part));
    // Every taxon of which a batch was struck stands in a plot, beside its take, and in the table.
    const ProgramRun takes = runWith({"take", printed.book, "--json"});
    REQUIRE(takes.status == 0);
    const auto told = nlohmann::json::parse(takes.out);
    int taxa = 0;
    for (const auto& row : told.at("groups")) {
        ++taxa;
        INFO(row.dump());
        // Quotes of cultivars are turned in print.
        const std::string name = row.at("group").get<std::string>();
        CHECK(timesIn(text, name.substr(0, name.find(" '"))) >= 2);
    }
    CHECK(taxa > 20);
    checkInsidePages(printed.pdf);
}

TEST_CASE("What can't be printed is refused in one line, and no file is made") {
    const Printed printed;
    const auto refusal = [&](const std::string& kind, const std::vector<std::string>& more) {
        const ProgramRun run = printed.print(kind, more);
        CHECK(run.status == 2);
        CHECK_FALSE(std::filesystem::exists(printed.pdf));
        return run.error;
    };
    CHECK(refusal("labels", {"--label", "wide"}) ==
          "warmbench: --label: found 'wide', expected two numbers such as 70x36\n");
    CHECK(refusal("labels", {"--label", "80x36"}) ==
          "warmbench: label: the last of a row ends at 240 mm on a page 210 mm wide\n");
    CHECK(refusal("labels", {"--roll", "20x10"}) ==
          "warmbench: label: it is 20 mm by 10 mm; expected at least 25 mm by 10 mm\n");
    CHECK(refusal("labels", {"--grid", "3x8.5"}) ==
          "warmbench: --grid: found '3x8.5', expected columns and rows such as 3x8\n");
    CHECK(refusal("labels", {"--batch", "99-001-A"}) ==
          "warmbench: --batch: found '99-001-A', expected the code of a batch of this book\n");
    CHECK(refusal("labels", {"--from", "2031-01-01"}) ==
          "warmbench: labels: there is no container to label\n");
    CHECK(refusal("strike-list", {"--days", "0"}) == "warmbench: --days: found 0, expected 1 to 3660\n");
    CHECK(has(refusal("posters", {}), "posters"));
}
