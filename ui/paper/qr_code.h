#pragma once

#include "core/quantity/result.h"

#include <QString>

#include <vector>

class QPainter;
class QRectF;

namespace warmbench::ui {

/// A QR code (ISO/IEC 18004) that holds a text, error correction M: 15 % of it may be soiled.
struct QrCode {
    int width = 0;          ///< modules along a side, without the quiet zone
    std::vector<char> dark; ///< width * width, row by row

    /// Modules along a side with the quiet zone of four that a reader needs on every side.
    [[nodiscard]] int fullWidth() const { return width + 8; }
};

/// Refused: a text that no QR code holds.
[[nodiscard]] Result<QrCode> qrCode(const QString& text);

/// Paints it, quiet zone included, into a square, black on white.
void paintQrCode(QPainter& painter, const QRectF& square, const QrCode& code);

} // namespace warmbench::ui
