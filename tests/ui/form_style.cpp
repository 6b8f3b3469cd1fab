#include "ui/form/form_style.h"

#include "ui/shell/style.h"
#include "ui/theme/contrast.h"
#include "ui/theme/palette.h"

#include <catch2/catch.hpp>

#include <QImage>
#include <QPainter>
#include <QStyleOptionButton>

using namespace warmbench::ui;

namespace {

/// A tick box of 16 pixels as the style draws it on the palette's panel.
QImage tickBox(const Palette& palette, QStyle::State state) {
    QImage image(16, 16, QImage::Format_ARGB32);
    image.fill(palette.panel);
    QPainter painter(&image);
    QStyleOptionButton option;
    option.rect = image.rect();
    option.palette = qtPalette(palette);
    option.state = state;
    FormStyle().drawPrimitive(QStyle::PE_IndicatorCheckBox, &option, &painter, nullptr);
    return image;
}

} // namespace

TEST_CASE("The edge of a tick box stands out from its ground in both palettes") {
    for (const Palette* palette : {&lightPalette(), &darkPalette()})
        CHECK(contrast(tickBox(*palette, QStyle::State_Off).pixelColor(8, 0), palette->panel) >= 3);
}

TEST_CASE("A tick is seen by its shape") {
    for (const Palette* palette : {&lightPalette(), &darkPalette()})
        CHECK(tickBox(*palette, QStyle::State_On) != tickBox(*palette, QStyle::State_Off));
}
