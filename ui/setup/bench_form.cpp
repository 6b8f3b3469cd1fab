#include "ui/setup/bench_form.h"

#include "ui/form/fields.h"

#include <QLineEdit>
#include <QSpinBox>

namespace warmbench::ui {
namespace {

constexpr int farthest = 1'000'000; // millimetres: the longest house

int millimetres(Millimetres length) {
    return static_cast<int>(length.parts);
}

} // namespace

BenchForm::BenchForm(const Bench& bench, QWidget* parent)
    : ThingForm(parent), m_bench(bench), m_name(addText(fields(), "benchName", tr("&Name"), bench.name)),
      m_x(addCount(fields(), "benchX", tr("From the house's &left end"), millimetres(bench.x), 0, farthest,
                   QStringLiteral("mm"))),
      m_y(addCount(fields(), "benchY", tr("From its &back wall"), millimetres(bench.y), 0, farthest,
                   QStringLiteral("mm"))),
      m_rows(addCount(fields(), "benchRows", tr("&Rows of slots, back to front"), bench.rows, 1, 1000)),
      m_cols(addCount(fields(), "benchCols", tr("&Columns, left to right"), bench.cols, 1, 1000)),
      m_slot(addCount(fields(), "benchSlot", tr("Side of a &slot"), millimetres(bench.slot), 20, 2000,
                      QStringLiteral("mm"))) {}

Result<Command> BenchForm::command() const {
    Bench bench = m_bench;
    bench.name = said(*m_name);
    bench.x = Millimetres{m_x->value()};
    bench.y = Millimetres{m_y->value()};
    bench.rows = m_rows->value();
    bench.cols = m_cols->value();
    bench.slot = Millimetres{m_slot->value()};
    return Command{Put<Bench>{bench}};
}

} // namespace warmbench::ui
