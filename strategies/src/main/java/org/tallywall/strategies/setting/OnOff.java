package org.tallywall.strategies.setting;

/** On or off. */
final class OnOff implements Kind<Boolean> {
  @Override
  public boolean allows(Object written) {
    return written instanceof Boolean;
  }

  @Override
  public Boolean read(Object written) {
    return (Boolean) written;
  }

  @Override
  public Object write(Boolean value) {
    return value;
  }

  @Override
  public String range(Boolean usual) {
    return "true or false";
  }
}
