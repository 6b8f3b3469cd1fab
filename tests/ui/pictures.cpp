#include "tests/support/small_nursery.h"
#include "ui/map/map_sheet.h"

#include <QGuiApplication>

#include <cstdio>

/// Writes pictures of the map and the window in several states into a folder.
int main(int argc, char** argv) {
    using namespace warmbench;
    qputenv("QT_QPA_PLATFORM", "offscreen");
    const QGuiApplication application(argc, argv);
    if (argc != 2) {
        std::fputs("ui_pictures: expected one folder\n", stderr);
        return 2;
    }
    const QString folder = QString::fromLocal8Bit(argv[1]) + QLatin1Char('/');
    const HouseBook book = tests::smallNursery();
    const ui::Wording wording(QLocale(QLocale::English, QLocale::UnitedKingdom));
    for (const char* name : {"map.png", "map.svg", "map.pdf"})
        if (const auto refusal = ui::writeMapSheet(book, tests::smallNurseryToday(),
                                                   folder + QLatin1String(name), {}, wording))
            std::puts(refusal->text().c_str());
    (void)ui::writeMapSheet(book, tests::smallNurseryToday(), folder + QLatin1String("map-dark.png"),
                            {1000, true}, wording);
    (void)ui::writeMapSheet(book, tests::smallNurseryToday(), folder + QLatin1String("map-wide.png"),
                            {3000, false}, wording);
}
