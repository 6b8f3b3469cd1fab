#include "ui/map/map_sheet.h"

#include "tests/support/small_nursery.h"

#include <catch2/catch.hpp>

#include <QFile>
#include <QImage>
#include <QPainter>
#include <QSet>
#include <QSvgRenderer>
#include <QTemporaryDir>

using namespace warmbench;
using namespace warmbench::ui;

namespace {

int coloursIn(const QImage& image) {
    QSet<QRgb> colours;
    for (int y = 0; y < image.height(); y += 3)
        for (int x = 0; x < image.width(); x += 3) colours.insert(image.pixel(x, y));
    return static_cast<int>(colours.size());
}

bool contains(const QImage& image, const QColor& colour) {
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            if (image.pixel(x, y) == colour.rgb()) return true;
    return false;
}

QByteArray contentOf(const QString& file) {
    QFile content(file);
    REQUIRE(content.open(QIODevice::ReadOnly));
    return content.readAll();
}

struct Folder {
    QTemporaryDir folder;
    [[nodiscard]] QString file(const char* name) const { return folder.filePath(QLatin1String(name)); }
    [[nodiscard]] Outcome write(const char* name, const SheetOptions& options = {}) const {
        return writeMapSheet(tests::smallNursery(), tests::smallNurseryToday(), file(name), options,
                             Wording());
    }
};

} // namespace

TEST_CASE("The map of a day is written as PNG with the colours of its heats and stages") {
    const Folder folder;
    REQUIRE(!folder.write("map.png", {900, false}));
    const QImage image(folder.file("map.png"));
    REQUIRE(image.width() == 900);
    CHECK(contains(image, lightPalette().heat[1]));
    CHECK(contains(image, lightPalette().of(Progress::Struck)));
    CHECK(contains(image, lightPalette().of(Progress::Ready)));
    REQUIRE(!folder.write("dark.png", {900, true}));
    CHECK(contains(QImage(folder.file("dark.png")), darkPalette().of(Progress::Rooted)));
}

TEST_CASE("The map of a day is written as SVG that draws more than paper, its words as text") {
    const Folder folder;
    REQUIRE(!folder.write("map.svg", {900, false}));
    QSvgRenderer renderer(folder.file("map.svg"));
    REQUIRE(renderer.isValid());
    QImage image(renderer.defaultSize(), QImage::Format_RGB32);
    image.fill(Qt::white);
    QPainter painter(&image);
    renderer.render(&painter);
    painter.end();
    CHECK(coloursIn(image) > 50);
    const QString text = QString::fromUtf8(contentOf(folder.file("map.svg")));
    CHECK(text.contains(QStringLiteral("Thursday 4 February 2027")));
    CHECK(text.contains(QStringLiteral("Glasshouse 1")));
    CHECK(text.contains(QStringLiteral("ready to pot on")));
}

TEST_CASE("The map of a day is written as a PDF of one page") {
    const Folder folder;
    REQUIRE(!folder.write("map.pdf"));
    const QByteArray content = contentOf(folder.file("map.pdf"));
    CHECK(content.startsWith("%PDF"));
    CHECK(content.trimmed().endsWith("%%EOF"));
    CHECK(content.contains("/Count 1"));
    CHECK(content.size() > 10'000);
}

TEST_CASE(
    "A map is not written under another suffix, in a size that no sheet has, or where there is no folder") {
    const Folder folder;
    const auto suffix = folder.write("map.bmp");
    REQUIRE(suffix);
    CHECK(suffix->what == "its name ends in 'bmp'; expected png, svg or pdf");
    CHECK(folder.write("map.png", {100, false}));
    CHECK(folder.write("map.png", {20001, false}));
    CHECK(folder.write("none/map.png"));
    CHECK(!QFile::exists(folder.file("map.bmp")));
    CHECK(!QFile::exists(folder.file("map.png")));
}

TEST_CASE("A book without a house has a sheet that says so") {
    const Folder folder;
    REQUIRE(!writeMapSheet(HouseBook{}, tests::smallNurseryToday(), folder.file("empty.svg"), {}, Wording()));
    CHECK(contentOf(folder.file("empty.svg")).contains("This book has no house yet."));
}
