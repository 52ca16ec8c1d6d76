// The example of the README, built as another project would build it.
// SPDX-License-Identifier: MIT
#include "../../examples/cpp/minimal.cpp"
