// SPDX-License-Identifier: GPL-3.0-or-later
// The plan in windows of every size: what fits into the view must not change the view.
#include "tests/app/canvas/stage_fixture.h"
#include "tests/support/registry.h"

namespace howlmap::app {
namespace {

class ResizeCounter : public QObject {
  public:
    int count = 0;
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Resize) ++count;
        return QObject::eventFilter(watched, event);
    }
};

}  // namespace

class TestSizes : public QObject {
    Q_OBJECT
  private Q_SLOTS:
    void every_size_comes_to_rest();
};

void TestSizes::every_size_comes_to_rest() {
    Stage_fixture f;
    f.view.zoom_fit();
    ResizeCounter counter;
    f.view.viewport()->installEventFilter(&counter);
    for (int width = 300; width <= 900; width += 23)
        for (int height = 200; height <= 700; height += 41) {
            f.view.resize(width, height);
            for (int round = 0; round < 6; ++round) QCoreApplication::processEvents();
            counter.count = 0;
            for (int round = 0; round < 6; ++round) QCoreApplication::processEvents();
            QVERIFY2(counter.count == 0, qPrintable(QStringLiteral("%1 x %2").arg(width).arg(height)));
        }
}

HOWLMAP_TEST(TestSizes)

}  // namespace howlmap::app

#include "test_sizes.moc"
