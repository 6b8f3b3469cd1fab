#include "ui/shell/place_row.h"
#include "ui/shell/find_box.h"

#include <catch2/catch.hpp>

#include <QAction>
#include <QApplication>
#include <QMenu>
#include <QPushButton>

using namespace warmbench::ui;

namespace {

const QStringList titles{"House",   "Today", "Strike list", "Round",   "Targets", "Stocks",
                         "Results", "Month", "Climate",     "Nursery", "Journal", "Season"};

/// A row of many places, whose words are longer by 40 % as those of another language may be.
struct ManyPlaces {
    PlaceRow row;

    explicit ManyPlaces(int width) {
        for (const QString& title : titles)
            row.addPlace(title, title + QString((2 * title.size() + 4) / 5, u'm'));
        row.setBookName(QStringLiteral("nursery of the long valley.warmbench"));
        row.resize(width, row.sizeHint().height());
        row.show();
        QApplication::processEvents();
    }
    QPushButton* button(int place) {
        return row.findChild<QPushButton*>(titles[place] + QStringLiteral("Place"));
    }
    /// Every part of the row that is in sight lies inside it, has room for its words and covers no other.
    void checkParts() {
        std::vector<QWidget*> seen;
        for (QWidget* part : row.findChildren<QWidget*>(QString(), Qt::FindDirectChildrenOnly))
            if (part->isVisible() && !part->isWindow()) seen.push_back(part);
        for (const QWidget* part : seen) {
            INFO(part->objectName().toStdString() << " " << part->x() << " " << part->width());
            CHECK(row.rect().contains(part->geometry()));
            if (qobject_cast<const QPushButton*>(part)) CHECK(part->width() >= part->sizeHint().width());
            for (const QWidget* other : seen)
                if (other != part) CHECK(!part->geometry().intersects(other->geometry()));
        }
    }
    QStringList menu() {
        auto* more = row.findChild<QPushButton*>(QStringLiteral("morePlaces"));
        if (!more->isVisible()) return {};
        Q_EMIT more->menu()->aboutToShow();
        QStringList names;
        for (const QAction* action : more->menu()->actions()) names += action->text();
        return names;
    }
};

} // namespace

TEST_CASE("Twelve places with long names fit into any row, as buttons or in the menu behind them") {
    for (const auto direction : {Qt::LeftToRight, Qt::RightToLeft})
        for (const int width : {480, 640, 1000, 1280, 2400}) {
            QApplication::setLayoutDirection(direction);
            ManyPlaces many(width);
            QApplication::setLayoutDirection(Qt::LeftToRight);
            many.checkParts();
            int buttons = 0;
            for (int place = 0; place < titles.size(); ++place) buttons += many.button(place)->isVisible();
            CHECK(buttons + many.menu().size() == titles.size());
            if (width <= 640) CHECK(!many.menu().isEmpty());
            if (width == 2400) CHECK(many.menu().isEmpty());
        }
}

TEST_CASE("The place in sight has its button, and the menu goes to any other") {
    ManyPlaces many(700);
    int chosen = -1;
    QObject::connect(&many.row, &PlaceRow::placeChosen, [&](int place) { chosen = place; });
    CHECK(!many.button(10)->isVisible());
    many.row.setCurrent(10);
    CHECK(many.button(10)->isVisible());
    CHECK(many.button(10)->isChecked());
    many.checkParts();
    const QStringList menu = many.menu();
    CHECK(!menu.contains(many.button(10)->text()));
    REQUIRE(menu.contains(many.button(11)->text()));
    many.row.findChild<QPushButton*>(QStringLiteral("morePlaces"))->menu()->actions().back()->trigger();
    CHECK(chosen == 11);
}
