#include "ui/paper/qr_code.h"

#include <QPainter>
#include <QPainterPath>

#include <qrencode.h>

#include <cerrno>
#include <cmath>
#include <cstring>
#include <memory>

namespace warmbench::ui {

Result<QrCode> qrCode(const QString& text) {
    const QByteArray bytes = text.toUtf8();
    const std::unique_ptr<QRcode, void (*)(QRcode*)> made(
        QRcode_encodeString8bit(bytes.constData(), 0, QR_ECLEVEL_M), &QRcode_free);
    if (!made) return Refusal{text.toStdString(), phrase("no QR code holds it: %1", std::strerror(errno))};
    QrCode code;
    code.width = made->width;
    const auto count = static_cast<std::size_t>(made->width) * static_cast<std::size_t>(made->width);
    code.dark.reserve(count);
    for (std::size_t i = 0; i < count; ++i) code.dark.push_back(static_cast<char>(made->data[i] & 1));
    return code;
}

void paintQrCode(QPainter& painter, const QRectF& square, const QrCode& code) {
    // Whole dots of the device for each module, from a whole dot on: a reader counts on modules of one size.
    const QTransform toDots = painter.combinedTransform();
    const double dotsPerUnit = toDots.m11();
    const double dots = std::floor(square.width() * dotsPerUnit / code.fullWidth());
    const double module = dots >= 1 ? dots / dotsPerUnit : square.width() / code.fullWidth();
    const double spare = (square.width() - module * code.fullWidth()) / 2;
    const QPointF corner = toDots.map(square.topLeft() + QPointF(spare, spare));
    const QPointF origin = toDots.inverted().map(QPointF(std::round(corner.x()), std::round(corner.y())));
    // Runs of a row as one shape, so that no hairlines show between modules.
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    for (int row = 0; row < code.width; ++row) {
        const auto darkAt = [&](int col) {
            return code.dark[static_cast<std::size_t>(row) * static_cast<std::size_t>(code.width) +
                             static_cast<std::size_t>(col)] != 0;
        };
        for (int col = 0; col < code.width;) {
            int end = col;
            while (end < code.width && darkAt(end)) ++end;
            if (end > col)
                path.addRect(origin.x() + (col + 4) * module, origin.y() + (row + 4) * module,
                             (end - col) * module, module);
            col = end + 1;
        }
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.fillRect(square, Qt::white);
    painter.fillPath(path, Qt::black);
    painter.restore();
}

} // namespace warmbench::ui
